/** A day of the history: what was done and answered, what came of it, and why. */
import type { HistoryDay } from '#api/patient/history-view.ts';
import { type Definition, DefinitionList } from '#ui/design-system/definition-list.tsx';
import './words.ts';
import { dayText, lengthText } from '#ui/language/text-of-time.ts';
import { weightText } from '#ui/language/weight-text.ts';
import { type PlainWordKey, t, translate } from '#ui/language/words.ts';
import { missing, scoreText, yesNoText } from '#ui/patient/questions/answers-in-words.ts';

type Session = HistoryDay['sessions'][number];
type Done = Session['exercises'][number];

const setsText = (exercise: Done): string => {
  const counts = exercise.sets.map((set) => set.repetitions ?? t('history.not-counted')).join(', ');
  const loads = [...new Set(exercise.sets.map((set) => set.loadKg))].filter(
    (load): load is number => load !== null && load > 0,
  );
  return [
    t(exercise.isHeld ? 'history.holds' : 'history.repetitions', { counts }),
    ...loads.map((kg) => weightText(kg)),
  ].join(' · ');
};

const row = (key: PlainWordKey, joint: string, value: string): Definition => ({
  key: `${key} ${joint}`,
  name: t(key),
  value,
});

const nameOf = {
  full: 'history.session',
  'bad-day': 'history.easier-session',
  test: 'history.test',
} as const satisfies Readonly<Record<Session['kind'], PlainWordKey>>;

const SessionPart = ({ session }: { readonly session: Session }) => (
  <section className="stack-close">
    <h3>{t(nameOf[session.kind])}</h3>
    <DefinitionList
      rows={session.exercises.map((exercise) => ({
        key: exercise.exerciseId,
        name: translate(exercise.title),
        value: <span className="figure">{setsText(exercise)}</span>,
      }))}
    />
    {session.joints.map((one) => (
      <div key={one.joint} className="stack-close">
        <h4>{t('joint.name', { joint: one.joint })}</h4>
        <DefinitionList
          rows={[
            row('history.pain-before', one.joint, scoreText(one.painBefore)),
            row('history.pain-during', one.joint, scoreText(one.painDuring)),
            row('history.pain-after', one.joint, scoreText(one.painAfter)),
          ]}
        />
      </div>
    ))}
  </section>
);

type Morning = HistoryDay['mornings'][number]['joints'][number];

const stiffnessText = (minutes: number | null): string =>
  minutes === null ? missing() : minutes === 0 ? t('history.not-stiff') : lengthText(minutes * 60);

/** Earlier releases asked how swollen it was, usual or not. */
const swellingText = ({ swelling, swellingQuestion }: Morning): string =>
  swelling === null || swelling === 'not-applicable'
    ? missing()
    : swellingQuestion === 'more-than-usual'
      ? t(`history.swelling-more-${swelling}`)
      : t(`history.swelling-absolute-${swelling}`);

/** What was not asked has no line; what was asked and left open says so. */
const bodyRows = (one: Morning): readonly Definition[] => [
  ...(one.stiffnessMinutes === 'not-applicable'
    ? []
    : [row('history.stiffness', one.joint, stiffnessText(one.stiffnessMinutes))]),
  ...(one.swelling === 'not-applicable' ? [] : [row('history.swelling', one.joint, swellingText(one))]),
];

/** Of the whole person, where it was asked. */
const wholeRows = ({ fatigue, otherJoint }: HistoryDay['mornings'][number]): readonly Definition[] => [
  ...(fatigue === 'not-applicable' ? [] : [row('history.fatigue', '', scoreText(fatigue))]),
  ...(otherJoint === undefined
    ? []
    : [
        row(
          'history.other-joint',
          '',
          yesNoText(otherJoint === 'not-answered' ? null : otherJoint === 'worse'),
        ),
      ]),
];

const MorningPart = ({ morning }: { readonly morning: HistoryDay['mornings'][number] }) => (
  <section className="stack-close">
    <h3>{t('history.morning')}</h3>
    {morning.joints.map((one) => (
      <div key={one.joint} className="stack-close">
        <h4>{t('joint.name', { joint: one.joint })}</h4>
        <DefinitionList
          rows={[
            row('history.pain-morning', one.joint, scoreText(one.pain)),
            ...bodyRows(one),
            row('history.flare', one.joint, yesNoText(one.flare)),
          ]}
        />
      </div>
    ))}
    <DefinitionList rows={wholeRows(morning)} />
  </section>
);

const DecisionPart = ({ decision }: { readonly decision: HistoryDay['decisions'][number] }) => (
  <section className="came-of-it keep-together stack-close">
    <h3>{t('history.what-next', { joint: decision.joint })}</h3>
    <p>{translate(decision.text)}</p>
    {decision.because.length > 0 ? (
      <>
        <h4>{t('history.why')}</h4>
        <ul>
          {decision.because.map((text) => (
            <li key={text.en}>{translate(text)}</li>
          ))}
        </ul>
      </>
    ) : null}
  </section>
);

/** Parts of one day have no ids of their own and never change order. */
const numbered = <T,>(parts: readonly T[]) => parts.map((part, index) => ({ part, key: String(index) }));

export const DayPart = ({ day }: { readonly day: HistoryDay }) => (
  <article className="history-day stack">
    <h2>{dayText(day.day)}</h2>
    {numbered(day.decisions).map(({ part, key }) => (
      <DecisionPart key={key} decision={part} />
    ))}
    {numbered(day.sessions).map(({ part, key }) => (
      <SessionPart key={key} session={part} />
    ))}
    {numbered(day.mornings).map(({ part, key }) => (
      <MorningPart key={key} morning={part} />
    ))}
  </article>
);
