/**
 * How often a drawn case is tried: so often in `npm test`, and as often as its guarantee is meant, with
 * seed after seed, by `npm run draw -- --minutes N`.
 */
export const drawSeed = Number(process.env.DRAW_SEED ?? 20_260_131);

export const rounds = (inTest: number, whole: number): number => (process.env.DRAW_SEED ? whole : inTest);
