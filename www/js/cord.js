import { cordLength } from "./cord-answer.js";
import * as engine from "./engine.js";
import { openPage } from "./question-page.js";

openPage(engine, engine.cutLength, cordLength);
