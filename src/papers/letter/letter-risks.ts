/** What a letter asks and warns of. Made from the record alone: nobody's own words take any of it out. */
import { type RedFlag, redFlagClasses } from '#core/decision/facts/facts.ts';
import { sentence } from '#core/episode/documents/document-words.ts';
import { screeningItem } from '#core/screening/items.ts';
import type { LetterSpeech } from '#messages/papers/colleague-words.ts';
import type { LetterPaper } from './letter-paper.ts';
import { methodOn, onLimbs } from './letter-record.ts';

type Urgency = keyof typeof redFlagClasses;

const urgencies = Object.keys(redFlagClasses) as readonly Urgency[];

/** Of several signs the most urgent one says how soon. */
const urgencyOf = (flags: readonly RedFlag[]): Urgency =>
  urgencies.find((one) => flags.some((flag) => (redFlagClasses[one] as readonly RedFlag[]).includes(flag))) ??
  'emergency';

const signLine = (
  { flags, reportedOn }: LetterPaper['openSigns'][number],
  { say, day, flag: inWords, quoted }: LetterSpeech,
): string => {
  const on = day(reportedOn);
  if (flags.length === 0) return say('sign-unnamed', { on });
  const what = sentence(flags.map((flag) => quoted(inWords(flag))).join('; '));
  return say(`sign-${urgencyOf(flags)}`, { on, what });
};

/** Empty where the letter is for information. */
export const asksOf = (
  { closed, openSigns, overUsual }: LetterPaper,
  speech: LetterSpeech,
): readonly string[] => {
  const { say, joint: inWords } = speech;
  return [
    ...openSigns.map((sign) => signLine(sign, speech)),
    ...closed
      .filter(({ clearedBy }) => clearedBy === 'physician')
      .map((line) => say('clear', { method: methodOn(line, speech), why: sentence(speech.reason(line)) })),
    ...overUsual.map(({ joint, over, answered, top }) =>
      say('over-usual', { where: inWords(joint), over, answered, top }),
    ),
  ];
};

const clearedLine = (
  { method, limbs, finding, reason, by, on }: LetterPaper['cleared'][number],
  speech: LetterSpeech,
): string => {
  const item = screeningItem(finding.from);
  return speech.say('cleared-by', {
    name: by,
    on: speech.day(on),
    method: onLimbs(method, limbs, speech),
    what: item ? speech.term(item.clinicianLabel) : speech.reason(finding).replace(/\.$/, ''),
    reason: sentence(reason),
  });
};

export const risksIn = (
  { openSigns, isPaused, closed, cleared }: LetterPaper,
  speech: LetterSpeech,
): readonly string[] => {
  const { say } = speech;
  return [
    say(openSigns.length === 0 ? 'no-sign' : 'open-sign'),
    ...(isPaused ? [say('is-paused')] : []),
    ...closed
      .filter(({ clearedBy }) => clearedBy === 'clinician')
      .map((line) => say('closed', { method: methodOn(line, speech), why: sentence(speech.reason(line)) })),
    ...cleared.map((one) => clearedLine(one, speech)),
  ];
};
