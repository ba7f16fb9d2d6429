import { passOn } from "./along.js";

// What is read and not filled in.

passOn();
