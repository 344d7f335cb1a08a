/** Sessions and morning checks that had arrived, newest first; what was asked and not answered says so. */
import { jointInWords, swellingInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/known-then.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import type { KnownThen } from '../../answers.ts';
import { type ClinicClock, momentInWords } from '../../when.ts';

interface AnswersProps {
  readonly known: Pick<KnownThen, 'sessions' | 'mornings'>;
  readonly clock: ClinicClock;
}

const answer = (value: number | string | null): string =>
  value === null ? say('no-answer') : value === 'not-applicable' ? say('not-asked') : String(value);

const sessionRows = ({ known, clock }: AnswersProps) =>
  known.sessions.flatMap(({ id, day, kind, recordedAt, joints }) =>
    joints.map(({ joint, painBefore, painDuring, painAfter }) => ({
      key: `${id} ${joint}`,
      cells: [
        day,
        jointInWords(joint),
        say(`kind.${kind}`),
        answer(painBefore),
        answer(painDuring),
        answer(painAfter),
        momentInWords(recordedAt, clock),
      ],
    })),
  );

const morningRows = ({ known, clock }: AnswersProps) =>
  known.mornings.flatMap(({ id, day, recordedAt, joints }) =>
    joints.map(({ joint, pain, stiffnessMinutes, swelling, swellingQuestion }) => ({
      key: `${id} ${joint}`,
      cells: [
        day,
        jointInWords(joint),
        answer(pain),
        answer(stiffnessMinutes),
        swelling === null || swelling === 'not-applicable'
          ? answer(swelling)
          : swellingInWords(swelling, swellingQuestion ?? 'absolute'),
        momentInWords(recordedAt, clock),
      ],
    })),
  );

const first = [
  { key: 'day', title: say('day') },
  { key: 'joint', title: say('joint') },
];
const last = { key: 'arrived', title: say('arrived') };
const figure = (key: 'before' | 'during' | 'after' | 'pain' | 'stiffness') => ({
  key,
  title: say(key),
  isNumber: true,
});

export const AnswersThen = (props: AnswersProps) => (
  <>
    <DataTable
      caption={say('sessions')}
      columns={[
        ...first,
        { key: 'kind', title: say('kind') },
        figure('before'),
        figure('during'),
        figure('after'),
        last,
      ]}
      rows={sessionRows(props)}
      empty={say('sessions.none')}
    />
    <DataTable
      caption={say('mornings')}
      columns={[
        ...first,
        figure('pain'),
        figure('stiffness'),
        { key: 'swelling', title: say('swelling') },
        last,
      ]}
      rows={morningRows(props)}
      empty={say('mornings.none')}
    />
  </>
);
