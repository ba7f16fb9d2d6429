export * from "./boughline.js";
