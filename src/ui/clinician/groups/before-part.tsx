'use client';
/** Asked before the work: pain now of each joint, and whether all is as usual, as on the phone. */
import type { Joint } from '#core/exercises/joints.ts';
import { type News as Kind, newsKinds } from '#core/record/entry-words.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/groups/hour.ts';
import { Button } from '#ui/design-system/button.tsx';
import { CheckField } from '#ui/design-system/checkbox-group.tsx';
import { listText } from '../forms/sent/sent-form.ts';
import { isAnsweredBefore, notSaid, painName, scoreIn, ticksIn } from './group-answers.ts';
import type { PersonPart } from './person-props.ts';
import { Presses, PressRow } from './press-row.tsx';
import { sayQuestion } from './sign-questions.ts';

const scores = [
  ...Array.from({ length: 11 }, (_, score) => ({ value: String(score), label: score })),
  { value: notSaid, label: say('not-said') },
];

const painQuestion = { before: 'pain-before', during: 'pain-during', after: 'pain-after' } as const;

interface PainProps extends PersonPart {
  readonly when: keyof typeof painQuestion;
  readonly joint: Joint;
}

export const PainRow = ({ person, typed, press, when, joint }: PainProps) => {
  const limit = person.today.painLookups.find((one) => one.joint === joint)?.acceptablePainLimit;
  const name = painName(when, joint);
  const score = scoreIn(typed[name]);
  return (
    <>
      <PressRow
        question={say(painQuestion[when], { where: jointInWords(joint) })}
        hint={when === 'during' && limit !== undefined ? say('pain-before.limit', { limit }) : undefined}
        options={scores}
        chosen={typed[name]}
        onPress={(pressed) => press({ [name]: pressed })}
      />
      {when !== 'before' && limit !== undefined && score !== null && score > limit ? (
        <p className="small limit-line" role="status">
          {say('pain-over', { limit, where: jointInWords(joint) })}
        </p>
      ) : null}
    </>
  );
};

export const yesNo = [
  { value: 'yes', label: say('answer.yes') },
  { value: 'no', label: say('answer.no') },
  { value: notSaid, label: say('not-said') },
];

/** The words of a list, as a clinician ticks them. */
const worded = (value: string): string => value.replaceAll('-', ' ');

/** With the last tick taken away it is open again, and not "nothing new". */
const ticked = (kinds: readonly string[]): string | undefined =>
  kinds.length === 0 ? undefined : listText(kinds);

const News = ({ person, typed, press }: PersonPart) => {
  const chosen = ticksIn<Kind>(typed.news) ?? [];
  const asked = newsKinds.filter((kind) => kind !== 'pregnancy' || person.today.asksPregnancy);
  return (
    <fieldset className="press-row">
      <legend>{sayQuestion('before.news')}</legend>
      <div>
        {asked.map((kind) => (
          <CheckField
            key={kind}
            name={`news-${person.patientId}-${kind}`}
            label={worded(kind)}
            isChecked={chosen.includes(kind)}
            onSwitch={(isTicked) =>
              press({
                news: ticked(isTicked ? [...chosen, kind] : chosen.filter((one) => one !== kind)),
              })
            }
          />
        ))}
      </div>
      <Presses
        options={[
          { value: 'none', label: sayQuestion('flags.none') },
          { value: notSaid, label: say('not-said') },
        ]}
        chosen={typed.news}
        onPress={(news) => press({ news })}
      />
      {chosen.length > 0 ? <p className="small">{say('news.note')}</p> : null}
    </fieldset>
  );
};

const usualOptions = [
  { value: 'yes', label: sayQuestion('usual.yes') },
  { value: 'no', label: sayQuestion('usual.no') },
];
const asUsual = { usual: 'yes', relief: 'no', news: 'none', 'other-joint': 'no' };
const notUsual = {
  ...{ usual: 'no', 'gone-through': undefined },
  ...{ relief: undefined, news: undefined, 'other-joint': undefined },
};

/** One press where nothing differs; else each thing is asked. */
const Usual = (props: PersonPart) => {
  const { person, typed, press } = props;
  const news = sayQuestion(person.today.asksPregnancy ? 'usual.news-pregnancy' : 'usual.news');
  return (
    <>
      <PressRow
        question={sayQuestion('usual.title')}
        hint={[sayQuestion('usual.other-joint'), sayQuestion('usual.relief'), news].join('. ')}
        options={usualOptions}
        chosen={typed.usual}
        onPress={(usual) => press(usual === 'yes' ? asUsual : notUsual)}
      />
      {typed.usual === 'no' ? (
        <>
          <PressRow
            question={sayQuestion('before.other-joint')}
            options={yesNo}
            chosen={typed['other-joint']}
            onPress={(answer) => press({ 'other-joint': answer })}
          />
          <PressRow
            question={sayQuestion('before.relief')}
            options={yesNo}
            chosen={typed.relief}
            onPress={(answer) => press({ relief: answer })}
          />
          <News {...props} />
          {isAnsweredBefore(person.today, typed) ? (
            <Button onClick={() => press({ 'gone-through': 'yes' })}>{say('before.done')}</Button>
          ) : (
            <p className="small">{say('before.open')}</p>
          )}
        </>
      ) : null}
    </>
  );
};

export const BeforePart = (props: PersonPart) => (
  <div className="stack-close">
    {props.person.today.joints.map((joint) => (
      <PainRow key={joint} {...props} when="before" joint={joint} />
    ))}
    <Usual {...props} />
  </div>
);
