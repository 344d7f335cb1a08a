/** Lists the days on which other settings would have given another answer. */
import { daysIn, type OtherDay, type WhatIf } from '#core/decision/what-if/what-if.ts';
import { isBeyondDecisions } from '#core/decision/what-if/what-if-fields.ts';
import type { Access } from '#data/access.ts';
import { type WhatIfAsked, whatIfOf, whatIfOfClinic } from '#data/replay/what-if.ts';
import { csvLines } from '#exchange/csv/cells.ts';
import { say } from '../say.mjs';

/** Stands with every look back, wherever it is shown. */
const warning =
  'The person would have answered differently to another dose. This says what the rules would have said of the answers that were given, and nothing of what would have followed.';

type Day = OtherDay & { readonly patientId: string };

const lineOf = ({ patientId, joint, day, before, after, rules, way }: Day): string => {
  const by = rules.length > 0 ? `; rules that differ: ${rules.join(', ')}` : '';
  return `${day} patient ${patientId}, ${joint}: was ${before.decision}, would have been ${after.decision} (${way})${by}`;
};

const rowOf = ({ patientId, ...day }: Day) => ({ patient: patientId, ...day });

/** How the days are written; as CSV the counts go beside them, so that a file holds rows alone. */
type Form = 'words' | 'json' | 'csv';

/** Once a file, however many clinics follow. */
export const csvHead = csvLines([['patient', 'day', 'joint', 'was', 'would_have_been', 'way', 'rules']]);

const cellsOf = ({ patientId, day, joint, before, after, way, rules }: Day) => [
  ...[patientId, day, joint, before.decision, after.decision, way, rules.join(' ')],
];

const wordsOf = (byWord: WhatIf['bolder']): string =>
  Object.entries(byWord)
    .filter(([, days]) => days > 0)
    .map(([word, days]) => `${word} ${days}`)
    .join(', ') || 'none';

const sumOf = (found: WhatIf & { readonly since: string }): readonly string[] => [
  `${found.looked} days of joints looked at since ${found.since}`,
  `more cautious: ${daysIn(found.moreCautious)} (would have been: ${wordsOf(found.moreCautious)})`,
  `bolder: ${daysIn(found.bolder)} (would have been: ${wordsOf(found.bolder)})`,
  `bolder in one answer and more cautious in another: ${found.other}`,
  warning,
];

const foundOf = async (access: Access, patientId: string | null, asked: WhatIfAsked) => {
  if (patientId !== null) {
    const { days, ...found } = await whatIfOf(access, patientId, asked);
    return { ...found, days: days.map((day) => ({ ...day, patientId })) };
  }
  const found = await whatIfOfClinic(access, asked, async ({ done, of }) => {
    if (done % 50 === 0) say(`${done} of ${of} patients looked at`);
    return true;
  });
  return found!;
};

export const tellWhatIf = async (
  access: Access,
  patientId: string | null,
  asked: WhatIfAsked,
  form: Form,
): Promise<number> => {
  const beyond = Object.keys(asked.moved.settings).filter(isBeyondDecisions);
  if (beyond.length > 0) say(`${beyond.join(', ')}: changes a dose and no decision, and does not show here.`);
  const { days, byWeek: _weeks, ...found } = await foundOf(access, patientId, asked);
  if (form === 'csv') {
    process.stdout.write(csvLines(days.map(cellsOf)));
    for (const line of sumOf({ ...found, days })) say(line);
    return 0;
  }
  const isJson = form === 'json';
  for (const day of days) console.log(isJson ? JSON.stringify(rowOf(day)) : lineOf(day));
  if (isJson) console.log(JSON.stringify({ clinic: access.clinicId, ...found, warning }));
  else for (const line of sumOf({ ...found, days })) console.log(line);
  return 0;
};
