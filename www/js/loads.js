import * as engine from "./engine.js";
import { loadsAnswer } from "./loads-answer.js";
import { openPage } from "./question-page.js";
import { rigEditor } from "./rig-editor.js";

openPage(engine, engine.loads, loadsAnswer);
rigEditor(document.querySelector("[data-rig-editor]"), engine);
