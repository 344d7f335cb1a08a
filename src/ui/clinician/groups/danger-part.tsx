'use client';
/** A warning sign of a person of the hour: told and not on record yet, or open on the record. */
import { signsInWords } from '#core/danger/sign-words.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { redFlagContact } from '#core/decision/rules/red-flags.ts';
import { say } from '#messages/en/staff/groups/hour.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { toldIn } from './group-answers.ts';
import type { PersonPart } from './person-props.ts';

const advice = {
  emergency: 'signs.emergency',
  'same-day': 'signs.same-day',
  routine: 'signs.routine',
} as const;

interface AdviceProps extends Pick<PersonPart, 'person'> {
  readonly flags: readonly RedFlag[];
}

/** How fast somebody has to look, and the number to ring where there is danger to life. */
export const SignAdvice = ({ person, flags }: AdviceProps) => {
  const contact = redFlagContact(flags);
  const { emergencyNumber: phone } = person.today;
  return contact === 'none' ? null : <p>{say(advice[contact], { signs: signsInWords(flags), phone })}</p>;
};

interface ReportingProps extends Pick<PersonPart, 'person' | 'typed'> {
  readonly isBusy: boolean;
  readonly onSave: () => void;
}

/** Told a moment ago and not on record yet: it is said what to do, and never that it was reported. */
export const Reporting = ({ person, typed, isBusy, onSave }: ReportingProps) => (
  <Notice tone="danger" title={say(isBusy ? 'signs.reporting' : 'signs.not-reported')} isAnnounced>
    <SignAdvice person={person} flags={toldIn(typed)} />
    {isBusy ? null : (
      <Button tone="stop" onClick={onSave}>
        {say('signs.again')}
      </Button>
    )}
  </Notice>
);

interface StoppedProps extends AdviceProps {
  readonly stop: 'warning-sign' | 'no-care';
  readonly isWithoutSignal: boolean;
}

/** `flags`: told in this hour; whom to ring for them comes before everything else. */
export const Stopped = ({ person, stop, flags, isWithoutSignal }: StoppedProps) => (
  <Notice tone={stop === 'warning-sign' ? 'danger' : 'care'} title={say(`stopped.${stop}`)}>
    <SignAdvice person={person} flags={flags} />
    {isWithoutSignal ? null : (
      <p>
        <a href={`/patients/${person.patientId}${stop === 'warning-sign' ? '/warning-signs' : ''}`}>
          {say(stop === 'warning-sign' ? 'to-signs' : 'to-record')}
        </a>
      </p>
    )}
  </Notice>
);
