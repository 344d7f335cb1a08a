/** Mutants that no test can notice, because nothing that is decided differs; each with its reason. */
export interface Equivalent {
  /** A file, or a folder whose files all have the line. */
  readonly file: string;
  /** The line as it stands, and as the mutant has it; blanks at the ends left out. */
  readonly line: string;
  readonly mutant: string;
  readonly reason: string;
}

export const equivalentMutants: readonly Equivalent[] = [
  {
    file: 'src/core/decision/facts/joint-facts.ts',
    line: 'painCeiling: Math.min(7, Math.max(5, baseline?.acceptablePainLimit ?? 5)),',
    mutant: 'painCeiling: Math.min(7, Math.max(5, baseline?.acceptablePainLimit ?? 4)),',
    reason: 'No limit on record is brought up to 5 by the bound beside it.',
  },
  {
    file: 'src/core/decision/rules/',
    line: 'since: 1,',
    mutant: 'since: 0,',
    reason: 'There is no version of the rules before the first.',
  },
  {
    file: 'src/core/decision/dose/cut-waits.ts',
    line: 'return isLately && share !== null && share >= nearlyAsMuch - 1e-9;',
    mutant: 'return isLately && share !== null && share > nearlyAsMuch - 1e-9;',
    reason: 'The room for rounding is in the bound: no share lies on it.',
  },
  ...['> remaining.least - 1e-9 && share <=', '>= remaining.least - 1e-9 && share <'].map((changed) => ({
    file: 'src/core/decision/dose/ease-back.ts',
    line: 'share >= remaining.least - 1e-9 && share <= remaining.most + 1e-9;',
    mutant: `share ${changed} remaining.most + 1e-9;`,
    reason: 'The room for rounding is in the bound: no share lies on it.',
  })),
  {
    file: 'src/core/decision/dose/ease-back.ts',
    line: "if (share !== null && share * 100 < settings['ease-floor-percent'] - 1e-9) return same('floor-reached');",
    mutant:
      "if (share !== null && share * 100 <= settings['ease-floor-percent'] - 1e-9) return same('floor-reached');",
    reason: 'The room for rounding is in the bound: no share lies on it.',
  },
  {
    file: 'src/core/decision/facts/completion-facts.ts',
    line: 'return sets.some((set) => set.repetitions !== null && set.repetitions > most);',
    mutant: 'return sets.some((set) => set.repetitions !== null && set.repetitions >= most);',
    reason: 'The room for rounding is in the bound: no count lies on it.',
  },
  {
    file: 'src/core/decision/facts/completion-facts.ts',
    line: 'return sets.length > dose.sets || sets.some((set) => set.loadKg !== null && set.loadKg > limit);',
    mutant:
      'return sets.length > dose.sets || sets.some((set) => set.loadKg !== null && set.loadKg >= limit);',
    reason: 'The room for rounding is in the bound: no load of whole grams lies on it.',
  },
  {
    file: 'src/core/decision/facts/completion-facts.ts',
    line: 'reserveShortfall = Math.max(reserveShortfall, dose.reserve - (set.reserve ?? 0));',
    mutant: 'reserveShortfall = Math.max(reserveShortfall, dose.reserve - ((set.reserve)));',
    reason: 'Null counts as 0 in a subtraction; the type checker refuses it.',
  },
  {
    file: 'src/core/decision/facts/evaluation-context.ts',
    line: 'return known.slice(Math.max(0, from)).find((one) => one.usualPain !== null)?.usualPain ?? null;',
    mutant: 'return (known.slice(Math.max(0, from)).find((one) => one.usualPain !== null)?.usualPain);',
    reason: 'Where none of them has a usual pain the one in force has none either, and there is no rise.',
  },
  {
    file: 'src/core/decision/facts/facts-from-record.ts',
    line: 'const diary = diaryFacts(context, baselineValues.usualPainTop ?? 0);',
    mutant: 'const diary = diaryFacts(context, (baselineValues.usualPainTop));',
    reason: 'Null counts as 0 in an addition; the type checker refuses it.',
  },
  {
    file: 'src/core/decision/facts/item-work.ts',
    line: "dose.method === 'occlusion' ? (dose.scheme[set - 1] ?? 0) : set <= dose.sets ? dose.repetitions.low : 0;",
    mutant:
      "dose.method === 'occlusion' ? (dose.scheme[set - 1] ?? (-1)) : set <= dose.sets ? dose.repetitions.low : 0;",
    reason: 'What was done of a set never counts as less than none.',
  },
  {
    file: 'src/core/decision/facts/item-work.ts',
    line: "dose.method === 'occlusion' ? (dose.scheme[set - 1] ?? 0) : set <= dose.sets ? dose.repetitions.low : 0;",
    mutant:
      "dose.method === 'occlusion' ? (dose.scheme[set - 1] ?? 0) : set <= dose.sets ? dose.repetitions.low : (-1);",
    reason: 'What was done of a set never counts as less than none.',
  },
  {
    file: 'src/core/decision/facts/item-work.ts',
    line: 'credit.set(one.set, Math.max(credit.get(one.set) ?? 0, done));',
    mutant: 'credit.set(one.set, Math.max(credit.get(one.set) ?? (-1), done));',
    reason: 'What was done of a set never counts as less than none.',
  },
  {
    file: 'src/core/decision/facts/joint-facts.ts',
    line: 'Math.min(usualPain + 2, Math.max(usualPain, baseline?.usualPainTop ?? usualPain));',
    mutant: 'Math.min(usualPain + 2, Math.max(usualPain, (baseline?.usualPainTop)));',
    reason: 'Null counts as 0 in a maximum, which is never over usual pain; the type checker refuses it.',
  },
  {
    file: 'src/core/decision/facts/patient-facts.ts',
    line: 'if (on < from - 1 && !session.clockDoubtful) break;',
    mutant: 'if (on < from - 2 && !session.clockDoubtful) break;',
    reason: 'It looks a day further back; what lies before the first day is passed over there.',
  },
  {
    file: 'src/core/decision/facts/record-index.ts',
    line: 'const byText = (a: string, b: string): number => Number(a > b) - Number(a < b);',
    mutant: 'const byText = (a: string, b: string): number => Number(a >= b) - Number(a < b);',
    reason: 'No two entries have one id.',
  },
  {
    file: 'src/core/decision/facts/record-index.ts',
    line: 'const byText = (a: string, b: string): number => Number(a > b) - Number(a < b);',
    mutant: 'const byText = (a: string, b: string): number => Number(a > b) - Number(a <= b);',
    reason: 'No two entries have one id.',
  },
  {
    file: 'src/core/decision/facts/record-index.ts',
    line: 'const minuteOf = ({ morning }: IndexedMorning): number => morning.localMinute ?? 0;',
    mutant: 'const minuteOf = ({ morning }: IndexedMorning): number => morning.localMinute ?? 1;',
    reason:
      'No morning of any clinic begins at midnight, so none told within it stands beside one told then.',
  },
  {
    file: 'src/core/decision/facts/record-index.ts',
    line: 'const minuteOf = ({ morning }: IndexedMorning): number => morning.localMinute ?? 0;',
    mutant: 'const minuteOf = ({ morning }: IndexedMorning): number => morning.localMinute ?? (-1);',
    reason:
      'No morning of any clinic begins at midnight, so none told within it stands beside one told then.',
  },
  {
    file: 'src/core/decision/facts/record-index.ts',
    line: 'const topOf = ({ usualPain, usualPainTop }: Baseline): number => usualPainTop ?? usualPain ?? -1;',
    mutant:
      'const topOf = ({ usualPain, usualPainTop }: Baseline): number => usualPainTop ?? usualPain ?? -2;',
    reason: 'Any number under 0 stands under every top.',
  },
  {
    file: 'src/core/decision/facts/record-index.ts',
    line: 'const answers = indexed.session.joints.find((one) => one.joint === joint) ?? null;',
    mutant: 'const answers = (indexed.session.joints.find((one) => one.joint === joint));',
    reason: 'Whoever reads it asks only whether there are answers; the type checker refuses it.',
  },
  {
    file: 'src/core/decision/dose/volume.ts',
    line: "if (badDay.method === 'occlusion' && dose.method === 'occlusion') {",
    mutant: "if (badDay.method === 'occlusion' || dose.method === 'occlusion') {",
    reason: 'Both have one method by then; the second asks for the type checker alone.',
  },
  {
    file: 'src/core/decision/dose/volume.ts',
    line: "if (badDay.method === 'low-load' && dose.method === 'low-load') {",
    mutant: "if (badDay.method === 'low-load' || dose.method === 'low-load') {",
    reason: 'Both have one method by then; the second asks for the type checker alone.',
  },
  {
    file: 'src/core/decision/dose/volume.ts',
    line: "if (badDay.method === 'variation' && dose.method === 'variation') {",
    mutant: "if (badDay.method === 'variation' || dose.method === 'variation') {",
    reason: 'Both have one method by then; the second asks for the type checker alone.',
  },
  {
    file: 'src/core/decision/dose/way-back.ts',
    line: 'const share = (dose: Dose): number => shareOf(dose, present) ?? Number.NEGATIVE_INFINITY;',
    mutant: 'const share = (dose: Dose): number => (shareOf(dose, present));',
    reason: 'Null counts as 0 in a subtraction, and every known share is more; the type checker refuses it.',
  },
  {
    file: 'src/core/decision/dose/way-back.ts',
    line: 'const halfWay = (from: number, to: number): number => from + Math.ceil(Math.max(0, to - from) / 2);',
    mutant:
      'const halfWay = (from: number, to: number): number => from + Math.ceil(Math.max((-1), to - from) / 2);',
    reason: 'Half of one less than none, rounded up, is none.',
  },
  {
    file: 'src/core/decision/dose/way-back.ts',
    line: "return day - one.day <= settings['return-within-days'] && share !== null && share > 1 + 1e-9;",
    mutant: "return day - one.day <= settings['return-within-days'] && share !== null && share >= 1 + 1e-9;",
    reason: 'The room for rounding is in the bound: no share lies on it.',
  },
];
