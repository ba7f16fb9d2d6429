import { canIClimb } from "./can-i-climb.js";
import * as engine from "./engine.js";
import { openPage } from "./question-page.js";

openPage(engine, engine.canIClimb, canIClimb);
