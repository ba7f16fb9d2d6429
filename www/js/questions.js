// What the engine answers each question with. No DOM here.

/** The engine's function of every question, by the id that links carry. */
export const questionsOf = (engine) => ({
  "can-i-climb": engine.canIClimb,
  advantage: engine.advantage,
  loads: engine.loads,
  "rope-length": engine.ropeLength,
  "cut-length": engine.cutLength,
  "cut-plan": engine.cutPlan,
  "coming-down": engine.comingDown,
  rescue: engine.rescue,
});
