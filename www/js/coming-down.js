import { descentAnswer } from "./descent-answer.js";
import * as engine from "./engine.js";
import { openPage } from "./question-page.js";
import { rigEditor } from "./rig-editor.js";

openPage(engine, engine.comingDown, descentAnswer);
rigEditor(document.querySelector("[data-rig-editor]"), engine);
