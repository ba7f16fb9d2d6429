import { textWidth } from "./text-box.js";

// The ways in which a rig may be drawn, the most readable first, then larger and larger.

const STRAND = 78; // a strand's length between two bodies
const RANK = 92; // between two stops that sit on one body
const BRIDGE = 22; // from a rope to what joins its parts beside it
const TAIL = 40; // of a loose end below the lowest body
const LEADS = [0, 52]; // room left of the first column, for words

/** The longest tension's width, of all strands or of those that stay on one body. */
function longest(ropes, chosen) {
  return Math.max(0, ...ropes.flatMap(({ stops, strands }) => strands
    .filter((_, i) => chosen(stops[i], stops[i + 1]))
    .map(({ tension }) => textWidth(tension.text, "tension"))));
}

/** Where somebody may sit: beside the rope; below the bar where no climber has a rope in hand; or in room kept for them. */
function seats({ levels, ropes }) {
  const here = ropes.flatMap(({ stops }) => stops).filter(({ level }) => levels[level]?.kind === "climber");
  if (here.length === 0) return ["apart"];
  return here.some(({ kind }) => kind === "hand") ? ["left", "right", "apart"] : ["left", "right", "under", "apart"];
}

/** Plans: words or letters, tensions level or turned, how far apart things are, and where somebody sits. */
export function* plans(drawing) {
  const { ropes } = drawing;
  const sides = seats(drawing);
  const tail = Math.max(TAIL, longest(ropes, (from) => from?.kind === "free") + 30);
  const strand = Math.max(STRAND, longest(ropes, (_, to) => to && to.kind !== "free") + 16);
  const onBody = longest(ropes, (from, to) => to && from.level === to.level);
  const rank = onBody === 0 ? RANK : Math.max(RANK, onBody + 46);
  const level = { words: true, turned: false, tail, bridge: BRIDGE, strand: STRAND, rank: RANK };
  const turned = { ...level, turned: true, strand, rank };
  for (const [base, pitches] of [[level, [78, 84, 110]], [turned, [70, 78, 84, 110]]]) {
    for (const pitch of pitches) {
      for (const lead of LEADS) {
        for (const seat of sides) yield { ...base, pitch, lead, seat };
      }
    }
  }
  for (let step = 0; step < 16; step += 1) {
    const pitch = 46 + step * 6;
    const bridge = Math.min(pitch / 2 - (step > 0 ? 4 : 0), 40);
    const grown = { words: false, turned: true, lead: 0, tail: tail + step * 6, pitch, bridge, strand: strand + step * 6, rank: rank + step * 12 };
    for (const seat of sides) yield { ...grown, seat };
  }
}
