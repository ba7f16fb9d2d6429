import { cordLength } from "./cord-answer.js";
import { cuttingPlan } from "./cutting-plan.js";
import * as engine from "./engine.js";
import { openPage } from "./question-page.js";

const cutting = cuttingPlan(engine);
openPage(engine, (draft, view) => cutting.beside(engine.cutLength(draft, view), draft, view), cordLength);
