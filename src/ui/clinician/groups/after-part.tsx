'use client';
import type { RedFlag } from '#core/decision/facts/facts.ts';
/** Asked after the work, and saving: warning signs are never left open, anything else may be and is named. */
import { say } from '#messages/en/staff/groups/hour.ts';
import { Button } from '#ui/design-system/button.tsx';
import { PainRow, yesNo } from './before-part.tsx';
import { exercisesNow, gaveWayName } from './group-answers.ts';
import { entryOf } from './group-entry.ts';
import { notDone } from './not-done.ts';
import type { PersonPart } from './person-props.ts';
import { PressRow } from './press-row.tsx';
import { sayQuestion } from './sign-questions.ts';
import { SignsPart } from './signs-part.tsx';

const rightOptions = [
  { value: 'yes', label: sayQuestion('right.yes') },
  { value: 'no', label: sayQuestion('right.no') },
];

/** One press where all of it is right; else each thing is asked. The short form names warning signs among the statements. */
const Right = ({ person, typed, press }: PersonPart) => {
  const { joints, isShortSigns } = person.today;
  const lines = [
    ...(isShortSigns ? [sayQuestion('right.signs')] : []),
    ...joints.map((joint) => sayQuestion('right.gave-way', { joint })),
    sayQuestion('right.extra'),
  ];
  const gaveWay = (answer: string | undefined) =>
    Object.fromEntries(joints.map((joint) => [gaveWayName(joint), answer]));
  const yes = {
    right: 'yes',
    extra: 'no',
    ...gaveWay('no'),
    ...(isShortSigns ? { 'signs-after': 'none', 'signs-after-form': 'short' } : {}),
  };
  const no = {
    right: 'no',
    extra: undefined,
    ...gaveWay(undefined),
    ...(isShortSigns ? { 'signs-after': undefined, 'signs-after-form': undefined } : {}),
  };
  return (
    <PressRow
      question={sayQuestion('right.title')}
      hint={lines.join('. ')}
      options={rightOptions}
      chosen={typed.right}
      onPress={(right) => press(right === 'yes' ? yes : no)}
    />
  );
};

const Each = ({ person, typed, press }: PersonPart) => (
  <>
    {person.today.joints.map((joint) => (
      <PressRow
        key={joint}
        question={sayQuestion('after.gave-way', { joint })}
        hint={sayQuestion('after.gave-way-hint', { joint })}
        options={yesNo}
        chosen={typed[gaveWayName(joint)]}
        onPress={(answer) => press({ [gaveWayName(joint)]: answer })}
      />
    ))}
    <PressRow
      question={sayQuestion('after.extra')}
      hint={sayQuestion('after.extra-hint')}
      options={yesNo}
      chosen={typed.extra}
      onPress={(answer) => press({ extra: answer })}
    />
  </>
);

interface AfterProps extends PersonPart {
  readonly isBusy: boolean;
  readonly onSave: () => void;
  readonly onReport: (flags: readonly RedFlag[]) => void;
}

const Work = (props: AfterProps) => {
  const { person, typed } = props;
  const { joints, isShortSigns } = person.today;
  const asksList = !isShortSigns || typed.right === 'no';
  return (
    <>
      {asksList && typed['signs-after'] === undefined ? (
        <SignsPart
          {...props}
          name="signs-after"
          question="flags.during"
          isShort={false}
          onReport={props.onReport}
        />
      ) : null}
      {joints.map((joint) => (
        <PainRow key={`during-${joint}`} {...props} when="during" joint={joint} />
      ))}
      {joints.map((joint) => (
        <PainRow key={`after-${joint}`} {...props} when="after" joint={joint} />
      ))}
      <Right {...props} />
      {typed.right === 'no' ? <Each {...props} /> : null}
    </>
  );
};

export const AfterPart = (props: AfterProps) => {
  const { person, typed, isBusy, onSave } = props;
  const exercises = exercisesNow(person.today, typed);
  // The instant is no part of what is named.
  const entry = entryOf(person, typed, { now: Number(typed.began ?? 0) });
  const open = notDone(entry, exercises, person.today);
  const didWork = entry.sets.length > 0;
  const waits = didWork && typed['signs-after'] === undefined;
  return (
    <div className="stack-close">
      {didWork ? <Work {...props} /> : null}
      <p className="small soft">
        {open.length === 0 ? say('not-done.none') : say('not-done', { things: open.join('; ') })}
      </p>
      {waits ? <p className="small">{say('after.signs-first')}</p> : null}
      <div className="presses">
        <Button disabled={waits || isBusy} onClick={onSave}>
          {isBusy ? say('save.saving') : say(didWork ? 'save' : 'save.empty')}
        </Button>
        {exercises.some(({ state }) => state === 'open') ? (
          <Button tone="plain" onClick={() => props.press({ finished: undefined })}>
            {say('finish.not')}
          </Button>
        ) : null}
      </div>
    </div>
  );
};
