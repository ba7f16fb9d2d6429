// Choices that boxes are shown for together, by field: `data-for="rig=@ground"` in a page. No DOM here.

export const CHOICE_GROUPS = new Map([
  ["rig", new Map([
    ["tail", ["tail-3", "tail-5", "tail-7"]],
    ["haul-cord", ["haul-cord-2", "haul-cord-3", "haul-cord-4", "haul-cord-5"]],
    ["ground", ["ground-1", "ground-3", "ground-5", "ground-9"]],
  ])],
  ["cordUse", new Map([
    ["hitch", [
      "prusik", "klemheist", "autoblock", "bachmann", "hedden", "valdotain", "distel", "schwabisch", "knut", "michoacan",
      "blakes", "openable", "own-hitch",
    ]],
    ["sling", ["foot-loop", "hand-loop", "bridge", "lanyard"]],
  ])],
]);
