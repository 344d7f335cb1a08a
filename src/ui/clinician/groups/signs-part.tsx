'use client';
/** Warning signs: asked in the words of the phone, one press where there is none, and never reported by one press. */
import { useState } from 'react';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { say } from '#messages/en/staff/groups/hour.ts';
import { Button } from '#ui/design-system/button.tsx';
import { CheckField } from '#ui/design-system/checkbox-group.tsx';
import { listText } from '../forms/sent/sent-form.ts';
import { LanguageChoice, useAskedIn } from './asked-in.tsx';
import type { PersonPart } from './person-props.ts';
import { familyLines, type SignQuestion, signOptions, signQuestion } from './sign-questions.ts';

interface SignsProps extends PersonPart {
  /** Where the answer is typed. */
  readonly name: 'signs' | 'signs-now' | 'signs-after';
  readonly question: SignQuestion | null;
  /** The short question was approved for this day. */
  readonly isShort: boolean;
  /** Left out = there is no way round an answer. */
  readonly onSlip?: () => void;
  readonly onReport: (flags: readonly RedFlag[]) => void;
}

interface TicksProps {
  readonly options: ReturnType<typeof signOptions>;
  readonly name: string;
  readonly ticked: readonly RedFlag[];
  readonly onTick: (flags: readonly RedFlag[]) => void;
}

const Ticks = ({ options, name, ticked, onTick }: TicksProps) =>
  options.map(({ value, label }) => (
    <CheckField
      key={value}
      name={`${name}-${value}`}
      label={label}
      isChecked={ticked.includes(value)}
      onSwitch={(isTicked) => onTick(isTicked ? [...ticked, value] : ticked.filter((one) => one !== value))}
    />
  ));

interface WaysProps {
  readonly isTicking: boolean;
  /** Signs that are ticked. */
  readonly count: number;
  readonly none: () => void;
  readonly onSlip: (() => void) | undefined;
  readonly onTick: () => void;
  readonly onReport: () => void;
}

const Ways = ({ isTicking, count, none, onSlip, onTick, onReport }: WaysProps) => {
  const tag = useAskedIn();
  return (
    <div className="presses">
      {count > 0 ? (
        <Button tone="stop" onClick={onReport}>
          {say('signs.report', { count })}
        </Button>
      ) : onSlip ? null : isTicking ? (
        <Button tone="plain" onClick={none}>
          {say('signs.slip')}
        </Button>
      ) : (
        <Button lang={tag} onClick={none}>
          {signQuestion(tag, 'flags.no-none')}
        </Button>
      )}
      {isTicking ? null : (
        <Button tone="plain" onClick={onTick}>
          {say('signs.some')}
        </Button>
      )}
      {onSlip ? (
        <Button tone="plain" onClick={onSlip}>
          {say('signs.slip')}
        </Button>
      ) : null}
    </div>
  );
};

export const SignsPart = ({ person, name, question, isShort, press, onSlip, onReport }: SignsProps) => {
  const { patientId, today } = person;
  const [isTicking, setTicking] = useState(onSlip !== undefined);
  const [ticked, setTicked] = useState<readonly RedFlag[]>([]);
  const tag = useAskedIn();
  const options = signOptions(today.hasCuff, tag);
  const lines = isShort ? familyLines(today.hasCuff, tag) : options.map(({ label }) => label);
  const none = () =>
    press({ [name]: listText([]), [`${name}-form`]: isShort && !isTicking ? 'short' : undefined });
  return (
    <fieldset className="press-row">
      <legend lang={question ? tag : undefined}>
        {question ? signQuestion(tag, question) : say('signs.which')}
      </legend>
      <LanguageChoice />
      {isTicking && !onSlip ? <p className="small">{say('signs.which')}</p> : null}
      {isTicking ? (
        <Ticks options={options} name={`${name}-${patientId}`} ticked={ticked} onTick={setTicked} />
      ) : (
        <ul className="signs-read small" lang={tag}>
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      <Ways
        {...{ isTicking, count: ticked.length, none, onSlip }}
        onTick={() => setTicking(true)}
        onReport={() => onReport(ticked)}
      />
    </fieldset>
  );
};
