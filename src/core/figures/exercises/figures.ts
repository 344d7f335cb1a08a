/** The drawing of every exercise, by its id. */
import type { ExerciseId } from '../../exercises/ids.ts';
import { elbow } from './arm.ts';
import { back } from './back.ts';
import { bridges } from './bridges.ts';
import { chestAndShoulder } from './chest-and-shoulder.ts';
import type { Figure } from './figure.ts';
import { hand } from './hand.ts';
import type { HandFigure } from './hand-figure.ts';
import { legRaises } from './leg-raises.ts';
import { lowerLeg } from './lower-leg.ts';
import { machines } from './machines.ts';
import { thigh } from './thigh.ts';
import { trunkAndNeck } from './trunk-and-neck.ts';

/** Every id is asked for by the type. */
const byId: Readonly<Record<ExerciseId, Figure | HandFigure>> = {
  ...thigh,
  ...bridges,
  ...legRaises,
  ...lowerLeg,
  ...chestAndShoulder,
  ...back,
  ...elbow,
  ...hand,
  ...trunkAndNeck,
  ...machines,
};

export const figures: Readonly<Record<string, Figure | HandFigure>> = byId;

export const isHand = (figure: Figure | HandFigure): figure is HandFigure => 'holds' in figure;
