import * as engine from "./engine.js";
import { openPage } from "./question-page.js";
import { rigEditor } from "./rig-editor.js";
import { ropeLength } from "./rope-answer.js";

openPage(engine, engine.ropeLength, ropeLength);
rigEditor(document.querySelector("[data-rig-editor]"), engine);
