/**
 * The way down. One step back where the last step is fresh, otherwise 20–30 % less volume. One cut per
 * flare episode and at most one in seven days; never under half of what was tolerated (since version 2 of the
 * most of it), where the answer is to make contact. Unbounded, this emptied the dose of almost every invented
 * diary.
 */
import type { Dose, OcclusionDose } from '#core/prescribing/dose.ts';
import { markKept } from '#core/prescribing/variation/held.ts';
import type { PrescriptionVersion } from '#core/record/record.ts';
import { dayMilliseconds } from '#core/time/day.ts';
import { milligrams } from '#core/units/units.ts';
import { type EngineSettingValues, engineVersionOf } from '../settings.ts';
import type { Candidate, CutWithheld, Ladder } from './proposal.ts';
import { heldFor, repetitionsAsked, shareOf } from './volume.ts';

/** Days in which a step up is still the likeliest cause of a bad answer. */
const freshStepDays = 14;
/** Published and agreed bounds of a cut, as shares that remain. */
const remaining = { least: 0.7, most: 0.8 } as const;

export interface EaseContext {
  readonly version: PrescriptionVersion;
  /** Every version of the line, oldest first. */
  readonly history: readonly PrescriptionVersion[];
  readonly instant: number;
  /** Longest flare among the joints that gate the line. */
  readonly flareDays: number;
  /** First day number of a flare that ended lately; null where none did. */
  readonly flareEnded: number | null;
  /** The dose under a share of which no cut goes. */
  readonly floorDose: Dose;
  readonly easeBacksBefore: number;
  /** Why a cut for pain alone waits, where a clinic lets it; null where it is made. */
  readonly waits: CutWithheld | null;
  /** Those that exist where the dose is done. */
  readonly loadsKg: readonly number[];
  readonly ladder: Ladder;
  readonly settings: EngineSettingValues;
}

const isWithinCut = (share: number): boolean =>
  share >= remaining.least - 1e-9 && share <= remaining.most + 1e-9;

/** The whole number of repetitions nearest to the wanted share that stays inside the bounds of a cut. */
const fewerRepetitions = (repetitions: number, share: number): number | null => {
  const wanted = repetitions * share;
  // Of two as near the smaller stays first.
  const fitting = [Math.floor(wanted), Math.ceil(wanted)].filter((count) => isWithinCut(count / repetitions));
  return fitting.sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted))[0] ?? null;
};

const cutScheme = (dose: OcclusionDose, share: number): OcclusionDose | null => {
  const shorter = dose.scheme.slice(0, -1);
  if (isWithinCut(repetitionsAsked({ ...dose, scheme: shorter }) / repetitionsAsked(dose))) {
    return { ...dose, scheme: shorter, sets: shorter.length };
  }
  const scheme = dose.scheme.map((repetitions) => Math.max(1, Math.floor(repetitions * share)));
  const cut = { ...dose, scheme };
  return repetitionsAsked(cut) < repetitionsAsked(dose) ? cut : null;
};

/** A set less where that is a fifth to three tenths, otherwise fewer repetitions in each set. */
const cutVolume = (dose: Dose, percent: number): Dose | null => {
  const share = 1 - percent / 100;
  if (dose.method === 'occlusion') return cutScheme(dose, share);
  if (isWithinCut((dose.sets - 1) / dose.sets)) return { ...dose, sets: dose.sets - 1 };
  const low = fewerRepetitions(dose.repetitions.low, share);
  if (low === null) return null;
  // The top falls with the floor: someone working near failure would otherwise do as many as before.
  const high = Math.max(low, Math.floor(dose.repetitions.high * share));
  return { ...dose, repetitions: { low, high } };
};

/** A hold of a second or two is a repetition: shorter than this it does not get. */
const leastHoldSeconds = 3;

const shorterHold = (dose: Dose, by: number): Dose | null =>
  dose.method === 'variation' && dose.hold && dose.hold.seconds - by >= leastHoldSeconds
    ? heldFor(dose, dose.hold.seconds - by)
    : null;

/**
 * Where few repetitions leave no whole number inside the bounds of a cut: one step down, in whatever can
 * act at once. The easier variation comes last, because one never signed for must wait.
 */
const oneStepDown = (dose: Dose, context: EaseContext): Dose | null => {
  const by = context.settings['repetition-step'];
  if (dose.method !== 'occlusion' && dose.repetitions.low > by) {
    const low = dose.repetitions.low - by;
    return { ...dose, repetitions: { low, high: Math.max(low, dose.repetitions.high - by) } };
  }
  if (dose.method !== 'variation') {
    const lighter = context.loadsKg.filter((kg) => milligrams(kg) < milligrams(dose.loadKg));
    if (lighter.length > 0) return { ...dose, loadKg: Math.max(...lighter) };
  }
  if (dose.method !== 'occlusion' && dose.sets > 1) return { ...dose, sets: dose.sets - 1 };
  const shorter = shorterHold(dose, context.settings['hold-step-seconds']);
  if (shorter) return shorter;
  const easier = dose.method === 'variation' ? context.ladder.easier(dose.exerciseId, dose.side) : null;
  if (dose.method !== 'variation' || !easier?.equipmentOwned || easier.side === null) return null;
  const { exerciseId, effectiveLoadKg } = easier;
  return { ...markKept(dose, exerciseId), exerciseId, effectiveLoadKg, side: easier.side ?? dose.side };
};

const previousVersion = ({ history, version }: EaseContext): PrescriptionVersion | undefined =>
  history.findLast((one) => one.version < version.version);

/** The dose before a fresh step, where that step is what raised it. */
const stepBack = (context: EaseContext): Dose | null => {
  const { version, instant } = context;
  const isFresh = instant - version.signedAt <= freshStepDays * dayMilliseconds;
  if (!isFresh || (version.origin !== 'progress' && version.origin !== 'return')) return null;
  const before = previousVersion(context);
  const share = before && shareOf(before.dose, version.dose);
  // A step in load starts the repetitions again, so the dose before it can ask for more in all.
  return before && typeof share === 'number' && share < 1 ? before.dose : null;
};

const withheldCut = (context: EaseContext): CutWithheld | null => {
  const lastCut = context.history.findLast((one) => one.origin === 'ease-back');
  if (!lastCut) return null;
  const since = context.instant - lastCut.signedAt;
  if (since < context.settings['cut-interval-days'] * dayMilliseconds) return 'cut-this-week';
  if (since <= context.flareDays * dayMilliseconds) return 'cut-this-flare';
  const began = context.flareEnded;
  if (began !== null && Math.floor(lastCut.signedAt / dayMilliseconds) >= began) return 'cut-last-flare';
  return null;
};

export const easeBack = (context: EaseContext): Candidate => {
  const { version, settings } = context;
  // In a reported flare the rules of the flare ask for a look.
  const isAskedByFlare = engineVersionOf(settings) >= 2 && context.flareDays > 0;
  const worklist =
    !isAskedByFlare && context.easeBacksBefore + 1 >= settings['ease-backs-to-worklist']
      ? (['two-ease-backs'] as const)
      : [];
  const same = (withheld: CutWithheld): Candidate => ({
    kind: 'same',
    dose: version.dose,
    withheld,
    worklist: withheld === 'floor-reached' ? [...worklist, 'floor-reached'] : worklist,
  });
  const withheld = context.waits ?? withheldCut(context);
  if (withheld) return same(withheld);
  const dose =
    stepBack(context) ??
    cutVolume(version.dose, settings['ease-volume-percent']) ??
    oneStepDown(version.dose, context);
  if (!dose) return same('floor-reached');
  const share = shareOf(dose, context.floorDose);
  if (share !== null && share * 100 < settings['ease-floor-percent'] - 1e-9) return same('floor-reached');
  return { kind: 'ease-back', dose, worklist };
};
