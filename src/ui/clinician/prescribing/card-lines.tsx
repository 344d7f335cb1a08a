/** What a proposed dose changes and what is special about it, a line each, with a shape where it asks care. */
import type { Joint } from '#core/exercises/joints.ts';
import { askedMore, mostAskedPercent } from '#core/prescribing/asked-more.ts';
import { changesFromInForce } from '#core/prescribing/changes-from-in-force.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { notesParted } from '#core/prescribing/proposal-parts.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { Mark, type Shape } from '#ui/design-system/mark.tsx';
import type { Proposed, Version } from '../answers.ts';
import { daysApartInWords } from '../programme/days-apart-words.ts';
import { besideInWords, largeStepInWords } from '../worklist/dose-step.ts';
import { type Held, heldInWords } from './held.ts';

export interface CardLinesProps {
  readonly proposed: Proposed;
  /** The version in force that it takes the place of; null for a new exercise. */
  readonly inForce: Pick<Version, 'dose' | 'badDay' | 'cautions'> | null;
  /** The same exercise in force otherwise, which stays. */
  readonly beside: readonly Dose[];
  readonly held: readonly Held[];
  /** Followed joints whose usual pain nobody has said. */
  readonly usualPainUnknown?: readonly Joint[];
  /** Days the planned week gives it; null = no week was planned. */
  readonly plannedDays?: number | null;
}

interface CardLine {
  readonly text: string;
  /** Left out = a change like any other. */
  readonly shape?: Shape;
  readonly tone?: 'care' | 'danger';
}

const care = (text: string | null): readonly CardLine[] =>
  text === null ? [] : [{ text, shape: 'care', tone: 'care' }];

const note = (text: string | null): readonly CardLine[] => (text === null ? [] : [{ text, shape: 'note' }]);

const moreLines = (before: Dose, now: Dose): readonly CardLine[] => {
  const { sessionPercent, weekPercent } = askedMore(before, now);
  return [
    ...care(sessionPercent === null ? null : say('whole-more', { percent: sessionPercent })),
    ...care(weekPercent === null ? null : say('week-more', { percent: weekPercent })),
  ];
};

const easierChange = (before: Dose, now: Dose): string | null => {
  const [from, to] = [doseInShort(before), doseInShort(now)];
  return from === to ? null : say('easier-change', { from, to });
};

/** An easier session that asks more than the one before it is what a sore joint is left with. */
const easierLines = (before: Dose, now: Dose): readonly CardLine[] => {
  const percent = mostAskedPercent(before, now);
  return percent === null
    ? note(easierChange(before, now))
    : care(`${easierChange(before, now) ?? ''} ${say('easier-more', { percent })}`.trim());
};

const changeLines = (before: Dose, now: Dose): readonly CardLine[] =>
  changesFromInForce(before, now).map(({ text, asksMore }) =>
    asksMore ? { text, shape: 'care', tone: 'care' } : { text },
  );

const usualUnknown = (joints: readonly Joint[]): string | null =>
  joints.length === 0 ? null : say('usual-pain-unknown', { joints: joints.map(jointInWords).join(', ') });

const linesOf = ({
  proposed,
  inForce,
  beside,
  held,
  usualPainUnknown = [],
  plannedDays = null,
}: CardLinesProps): readonly CardLine[] => {
  const { dose, badDay } = proposed;
  const heldBy = heldInWords(held, proposed.joints);
  const before = inForce?.dose ?? null;
  return [
    ...(heldBy ? ([{ text: say('held.card', { by: heldBy }), shape: 'stop', tone: 'danger' }] as const) : []),
    ...care(usualUnknown(usualPainUnknown.filter((joint) => proposed.joints.includes(joint)))),
    ...(before ? changeLines(before, dose) : []),
    ...care(largeStepInWords(before, dose)),
    ...(before ? moreLines(before, dose) : []),
    ...besideInWords(beside).flatMap(care),
    ...care(daysApartInWords(dose, plannedDays)),
    ...(inForce ? easierLines(inForce.badDay, badDay) : []),
    ...notesParted(proposed.notes).open.flatMap(({ text }) => note(text)),
  ];
};

export const CardLines = (props: CardLinesProps) => (
  <ul className="plain-list lined card-lines">
    {linesOf(props).map(({ text, shape, tone }) =>
      shape ? (
        <li key={text} className={tone ? `card-line card-${tone}` : 'card-line'}>
          <Mark shape={shape} />
          <span>{text}</span>
        </li>
      ) : (
        <li key={text}>
          <strong>{text}</strong>
        </li>
      ),
    )}
  </ul>
);
