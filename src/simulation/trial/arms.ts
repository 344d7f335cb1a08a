/** Every arm of the trial, by the name it is asked for. */
import { type EngineSettingValues, engineDefaults } from '#core/decision/settings.ts';
import type { Arm } from './arm.ts';
import { byHandHold, byHandMayCut } from './arms/by-hand.ts';
import { engineArms } from './arms/engine.ts';
import { frontier, oracle } from './arms/oracle.ts';
import { fixedRise, sameDose } from './arms/unattended.ts';

/** Clinic settings reach the arms that run the engine and no other. */
export const armsWith = (settings: EngineSettingValues): readonly Arm[] => [
  ...engineArms(settings),
  byHandHold,
  byHandMayCut,
  fixedRise,
  sameDose,
  oracle,
];

/** What is run unless arms are named. */
export const armIds: readonly string[] = armsWith(engineDefaults).map(({ id }) => id);

/** Those, and the other points of the oracle's line. */
export const armsWithFrontier = (settings: EngineSettingValues): readonly Arm[] => [
  ...armsWith(settings),
  ...frontier.filter(({ id }) => !armIds.includes(id)),
];
