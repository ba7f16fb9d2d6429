import ready, { canIClimb } from "boughline";

const plan = { bodyMass: "80 kg", stature: "175 cm", measuredPull: "640 N", rig: "tail-3", climbHeight: "11 m", wayDown: "descend", secondPerson: "rescuer" };

const status = document.querySelector("pre");
await ready().catch((error) => {
  status.textContent = `This page lacks a part: ${error.message}`;
  throw error;
});
const reply = canIClimb(plan);
status.textContent = reply.ok
  ? [reply.answer.verdict.text, reply.answer.first, reply.answer.second, "", ...reply.answer.cautions.map(({ text }) => `! ${text}`)].join("\n")
  : reply.errors.map(({ message }) => message).join("\n");
