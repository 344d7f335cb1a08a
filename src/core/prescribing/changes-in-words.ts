/** What a proposal changes, in sentences for the clinician. */
import type { DoseProposal, Naming } from '../decision/dose/proposal.ts';
import type { DoseChange } from '../decision/dose/volume.ts';
import { exerciseTitle } from '../exercises/catalogue.ts';
import { massInWords } from '../review/plain-words.ts';

const titleOf = (exerciseId: string | number): string => exerciseTitle(String(exerciseId));

const percentText = (percent: number | null): string =>
  percent === null ? ' (size of the step not known)' : ` (${percent > 0 ? '+' : ''}${percent.toFixed(1)} %)`;

/** "12–12" is said as 12. */
const bandText = (band: string | number): string => {
  const [low, high] = String(band).split('–');
  return low !== undefined && low === high ? low : String(band);
};

export const changeText = ({ variable, from, to, percent }: DoseChange): string => {
  switch (variable) {
    case 'rung':
      // The moved mass is often the same on both; the size of such a step is said by the ladder.
      return `Exercise: ${titleOf(from)} → ${titleOf(to)}${percent === 0 ? '' : percentText(percent)}.`;
    case 'load':
      return `Load: ${massInWords(Number(from))} → ${massInWords(Number(to))}${percentText(percent)}.`;
    case 'hold':
      return `Each hold: ${from} s → ${to} s${percentText(percent)}.`;
    case 'mark':
      return `Mark of the putty, ring or band: ${from} → ${to} (size of the step not known).`;
    case 'sets':
      return `Sets: ${from} → ${to}.`;
    case 'holds':
      return `Holds: ${bandText(from)} → ${bandText(to)}.`;
    case 'repetitions':
      return `Repetitions: ${bandText(from)} → ${bandText(to)}.`;
  }
};

const namingText: Readonly<Record<Naming, string>> = {
  'over-ten-percent': 'This step is over 10 %; nothing smaller is owned.',
  'step-size-unknown': 'The size of this step is not known.',
  'return-not-step': 'A return half-way toward a dose signed and tolerated before, not a step.',
  'repetitions-start-again': 'Repetitions start again at the bottom of the band.',
  'loads-more-joints':
    'The next version loads further joints or brings further cautions; read them before signing.',
  'bound-by-limit': 'Kept within a limit that holds for a joint.',
};

const isHeldIn = ({ changes }: DoseProposal): boolean =>
  changes.some(({ variable }) => variable === 'hold' || variable === 'holds');

/** Only a load is bound by what is at home; a hold is not counted in repetitions. */
const namedText = (name: Naming, proposal: DoseProposal): string => {
  if (name === 'over-ten-percent' && !proposal.changes.some(({ variable }) => variable === 'load'))
    return 'This step is over 10 %.';
  if (name === 'repetitions-start-again' && isHeldIn(proposal))
    return 'Holds start again at the bottom of the band.';
  return namingText[name];
};

const withheldText = {
  'cut-this-week': 'No second cut so soon after the last one.',
  'cut-this-flare': 'No second cut in one flare.',
  'step-this-week': 'No second step so soon after the last: the next repetitions follow by themselves.',
  'machine-step':
    'The next load of the machine is a larger step than the clinic lets the dose take by itself. A clinician may prescribe it, or a machine with smaller steps.',
  'cut-last-flare': 'No second cut so soon after a flare with a cut in it.',
  'easier-in-flare': 'No cut in a young flare: the easier session stands in for it.',
  'tolerated-lately':
    'No cut of a dose tolerated lately, until two of the last three mornings after a session are well over usual.',
  'floor-reached':
    'No further cut: it would go too far under what was tolerated or signed. Contact the patient.',
} as const;

export const sameAgain = 'The same dose again.';

export const changesForClinician = (proposal: DoseProposal): readonly string[] => [
  ...proposal.changes.map(changeText),
  ...proposal.named.map((name) => namedText(name, proposal)),
  ...(proposal.withheld ? [withheldText[proposal.withheld]] : []),
  ...(proposal.changes.length === 0 && proposal.kind !== 'stop' ? [sameAgain] : []),
  ...(proposal.kind === 'stop' ? ['No session until a clinician reopens it.'] : []),
];
