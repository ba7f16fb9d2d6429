import { CLIMB_STEPS, FULL } from "./effort.js";

// The questions that can stand in somebody else's page. No DOM here: the build reads it too.

const question = (ask, page, title, { wanted = [], steps = [FULL] } = {}) => ({ ask, page, title, wanted, steps });

/**
 * By a question's name: the engine's function, the page with the whole answer, what people call it, the boxes worth
 * having beside those without which there is no answer, and the efforts it is reckoned with, a step each.
 */
export const QUESTIONS = new Map([
  ["can-i-climb", question("canIClimb", "index.html", "Can I climb this?",
    { wanted: ["measuredPull", "stature", "wayDown", "secondPerson"], steps: CLIMB_STEPS })],
  ["advantage", question("advantage", "advantage.html", "Which advantage?", { wanted: ["measuredPull", "stature"] })],
  ["loads", question("loads", "loads.html", "What does each part carry?", { wanted: ["anchor"] })],
  ["rope-length", question("ropeLength", "rope-length.html", "How much rope?")],
  ["cut-length", question("cutLength", "cord.html", "What length of cord?")],
  ["cut-plan", question("cutPlan", "cord.html", "Out of which hanks?", { wanted: ["hanks"] })],
  ["coming-down", question("comingDown", "coming-down.html", "Can I get down again?", { wanted: ["gripRight"] })],
  ["rescue", question("rescue", "rescue.html", "What if I am stuck?", { wanted: ["anchor", "secondPerson"] })],
]);
