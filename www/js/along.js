import { carriesPlan, planIn } from "./link.js";
import { Pages } from "./pages.js";

// A page that asks nothing: the plan it was opened with goes on, untouched, to wherever one goes next.

const asked = (plan, page) => plan.replace(/(?<=^|&)q=[\w-]+/u, `q=${page}`);

/** Puts the plan of the address into the links to other pages, and keeps it there when the address names a place. */
export function passOn() {
  const pages = new Pages(document);
  const take = () => {
    // A link leads to the question it is of, else the next page says that it was made for another.
    if (carriesPlan(location.hash)) pages.carry((page) => (page ? asked(planIn(location.hash), page) : planIn(location.hash)));
  };
  addEventListener("hashchange", take);
  take();
}
