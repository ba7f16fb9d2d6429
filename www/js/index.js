import { canIClimb, showHelps } from "./can-i-climb.js";
import * as engine from "./engine.js";
import { openPage } from "./question-page.js";
import { rigEditor } from "./rig-editor.js";

openPage(engine, engine.canIClimb, { ...canIClimb, last: (draft, view) => showHelps(engine.whatHelps(draft, view, 1000)) });
rigEditor(document.querySelector("[data-rig-editor]"), engine);
