import * as engine from "./engine.js";
import { openPage } from "./question-page.js";
import { rescueAnswer } from "./rescue-answer.js";
import { rigEditor } from "./rig-editor.js";

openPage(engine, engine.rescue, rescueAnswer);
rigEditor(document.querySelector("[data-rig-editor]"), engine);
