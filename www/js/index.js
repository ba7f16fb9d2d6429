import * as engine from "./engine.js";
import { keepAddress } from "./places.js";
import { watchPresses } from "./press.js";
import { QuestionPage } from "./question-page.js";

keepAddress(document);
watchPresses(document);
new QuestionPage(document.querySelector("form[data-question]"), engine, engine.canIClimb).start();
