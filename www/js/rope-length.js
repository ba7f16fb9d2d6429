import * as engine from "./engine.js";
import { openPage } from "./question-page.js";
import { ropeLength } from "./rope-answer.js";

openPage(engine, engine.ropeLength, ropeLength);
