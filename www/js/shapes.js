// A shape for each verdict, so that colour never speaks alone.
export const SHAPES = {
  "within-reach": "M8 1.5a6.5 6.5 0 1 0 .01 0Z M4.8 8.2l2.3 2.4 4.2-5",
  "at-limit": "M8 1.5a6.5 6.5 0 1 0 .01 0Z M4.5 8h7",
  "out-of-reach": "M8 2 15 14H1Z M8 6.5v3.5 M8 11.8v.4",
  none: "M8 1.5a6.5 6.5 0 1 0 .01 0Z",
};
