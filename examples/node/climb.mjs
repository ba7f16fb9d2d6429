import { canIClimb } from "boughline";

const plan = {
  bodyMass: "80 kg",
  stature: "175 cm",
  measuredPull: 640, // a number is in SI: newtons
  rig: "tail-3",
  climbHeight: "11 m",
  wayDown: "descend",
  secondPerson: "rescuer",
};
const reply = canIClimb(plan);
if (reply.ok) {
  const { verdict, first, second, figures, cautions } = reply.answer;
  console.log([verdict.text, first, second, ""].join("\n"));
  for (const { noun, text, range } of figures) console.log(noun, text, range ?? "");
  for (const { text } of cautions) console.error(`! ${text}`);
} else {
  for (const { fields, message } of reply.errors) console.error(`${fields.join()}: ${message}`);
}
