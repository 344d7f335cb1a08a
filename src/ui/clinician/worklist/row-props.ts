/** A row of the worklist in words, made on the server: the browser is sent no rules, exercises or clocks. */
import type { Joint } from '#core/exercises/joints.ts';
import { mostFollowedJoints } from '#core/record/followed-joints.ts';
import { jointInWords, listed } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { dangers } from '#core/worklist/item.ts';
import { say } from '#messages/en/staff/worklist.ts';
import type { Shape } from '#ui/design-system/mark.tsx';
import type { WorklistItem, WorklistLine } from '../answers.ts';
import { agoInWords, type ClinicClock } from '../when.ts';
import { itemStatusOf } from '../words.ts';
import { hrefOf, type Primary, primaryOf } from './item-place.ts';
import { type RowDose, rowDose } from './row-dose.tsx';
import { type SignLife, signLife } from './sign-life.ts';
import { type StripDrawing, stripDrawing } from './strip-drawing.ts';

export interface RowItem {
  readonly key: string;
  readonly word: string;
  readonly shape: Shape;
  readonly tone: ReturnType<typeof itemStatusOf>['tone'];
  readonly sentence: string;
  readonly ago: string;
  readonly handled: string;
}

export interface BenchRow {
  readonly patientId: string;
  readonly name: string;
  /** "58 · left ankle". */
  readonly who: string;
  readonly href: string;
  readonly work: WorklistItem['work'];
  readonly fact: string;
  /** Under the fact; empty where the fact is all. */
  readonly second: string;
  readonly phone: string | null;
  /** The first; its words are the fact. */
  readonly item: Pick<RowItem, 'key' | 'ago' | 'handled'>;
  readonly others: readonly RowItem[];
  readonly canSnooze: boolean;
  readonly primary: Primary;
  readonly doses: readonly RowDose[];
  readonly strip: StripDrawing | null;
  /** How far a warning sign has come; null for everything else. */
  readonly life: SignLife | null;
}

const handledInWords = ({ acknowledgedBy, assignedName }: WorklistItem): string =>
  [
    acknowledgedBy ? say('acknowledged', { name: acknowledgedBy }) : '',
    assignedName ? say('assigned', { name: assignedName }) : '',
  ]
    .filter(Boolean)
    .join(', ');

/** Stands in a sentence for its joint while sentences are compared. */
const theJoint = '\u{fffc}';

/** A sentence that begins with the word it stands behind goes on from it. */
const goesOn = (word: string, sentence: string): string =>
  sentence.startsWith(`${word} `) ? sentence.slice(word.length + 1) : sentence;

const itemOf = (item: WorklistItem, clock: ClinicClock): RowItem => ({
  key: item.key,
  ...itemStatusOf(item.kind),
  sentence: item.sentence,
  ago: agoInWords(item.since, clock),
  handled: handledInWords(item),
});

/** Where one thing is said of several joints, it is said once, with the joints in one list. */
const saidOnce = (items: readonly WorklistItem[], clock: ClinicClock): readonly RowItem[] => {
  const groups = new Map<string, { readonly item: RowItem; readonly joints: string[] }>();
  for (const one of items) {
    const item = itemOf(one, clock);
    const joint = one.joint === null ? '' : jointInWords(one.joint as Joint);
    const open = joint === '' ? item.sentence : item.sentence.replace(joint, theJoint);
    const like = [one.kind, open, item.ago, item.handled].join(' ');
    const known = groups.get(like);
    if (known && joint !== '') known.joints.push(joint);
    else groups.set(known ? one.key : like, { item: { ...item, sentence: open }, joints: [joint] });
  }
  return [...groups.values()].map(({ item, joints }) => ({
    ...item,
    sentence: goesOn(item.word, item.sentence.replace(theJoint, listed(joints, mostFollowedJoints))),
  }));
};

/** First what there is to do: the sign, the dose, the message, or the figures; under it what else is known. */
const factOf = ({ item, figures, message }: WorklistLine, doses: readonly RowDose[]) => {
  if (item.kind === 'awaiting-signature' && doses[0])
    return doses.length === 1
      ? { fact: doses[0].step, second: doses[0].full }
      : {
          fact: doses.map(({ step }) => step).join('; '),
          second: say('doses-wait', { count: doses.length }),
        };
  if (item.kind === 'message' && message !== null)
    return { fact: say('quoted', { text: message }), second: item.sentence };
  return figures === null || item.work === 'no-answers' || item.work === 'danger'
    ? { fact: item.sentence, second: figures ?? '' }
    : { fact: figures, second: item.sentence };
};

export const benchRow = (line: WorklistLine, clock: ClinicClock, day: Day): BenchRow => {
  const { patientId, item, others, age, joint, strip, givenName, familyName } = line;
  const doses = line.doses.map((dose) => rowDose(dose));
  return {
    patientId,
    name: `${givenName} ${familyName}`,
    who: [age === null ? '' : String(age), joint ? jointInWords(joint) : ''].filter(Boolean).join(' · '),
    href: hrefOf(patientId, item),
    work: item.work,
    ...factOf(line, doses),
    phone: line.phone,
    item: { key: item.key, ago: agoInWords(item.since, clock), handled: handledInWords(item) },
    others: saidOnce(others, clock),
    canSnooze: !dangers.includes(item.kind),
    primary: primaryOf(line),
    doses,
    strip: strip && stripDrawing(strip, day),
    life: item.work === 'danger' ? signLife([item, ...others], clock) : null,
  };
};
