import { carriesPlan, planIn } from "./link.js";
import { Pages } from "./pages.js";

// A page that asks nothing: the plan it was opened with goes on, untouched, to wherever one goes next.

/** Puts the plan of the address into the links to other pages, and keeps it there when the address names a place. */
export function passOn() {
  const pages = new Pages(document);
  const take = () => {
    if (carriesPlan(location.hash)) pages.carry(() => planIn(location.hash));
  };
  addEventListener("hashchange", take);
  take();
}
