'use client';
/** A change of an episode of care: only what may follow is offered, each with a day and a reason. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { breakKinds, type EpisodeState } from '#core/episode/episode.ts';
import { episodeChangeFields } from '#core/episode/episode-fields.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/episode.ts';
import { client } from '#ui/clinician/client.ts';
import { useSubmit } from '#ui/clinician/forms/use-submit.ts';
import { Button } from '#ui/design-system/button.tsx';
import { DayField } from '#ui/design-system/day/day-field.tsx';
import type { Problem } from '#ui/design-system/error-summary.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { breakInWords, changeInWords } from './episode-words.ts';

interface ChangeFormProps {
  readonly patientId: string;
  readonly episodeId: string;
  readonly from: EpisodeState;
  readonly may: readonly EpisodeState[];
  readonly day: Day;
}

const hints: Partial<Record<EpisodeState, string>> = {
  'on-break': say('on-break-means'),
  discharged: say('ends-all-prescriptions'),
  transferred: say('ends-all-prescriptions'),
  died: say('ends-everything-at-once'),
};

interface Typed {
  readonly to: EpisodeState | null;
  readonly on: string;
  readonly reason: string;
  readonly breakKind: (typeof breakKinds)[number] | null;
  readonly expectedBack: string;
}

const BreakFields = (props: {
  readonly prefix: string;
  readonly typed: Typed;
  readonly onType: (more: Partial<Typed>) => void;
  readonly errorOf: (name: string) => string | undefined;
}) => (
  <>
    <RadioGroup
      name={`${props.prefix}breakKind`}
      legend={say('kind-of-break')}
      isWrapped
      error={props.errorOf('breakKind')}
      options={breakKinds.map((value) => ({ value, label: breakInWords[value] }))}
      chosen={props.typed.breakKind}
      onChoose={(breakKind) => props.onType({ breakKind })}
    />
    <DayField
      name={`${props.prefix}expectedBack`}
      label={say('expected-back')}
      hint={say('back-unknown')}
      isOptional
      value={props.typed.expectedBack}
      error={props.errorOf('expectedBack')}
      onDay={(expectedBack) => props.onType({ expectedBack })}
    />
  </>
);

const useChange = ({ patientId, episodeId, day }: ChangeFormProps) => {
  const router = useRouter();
  const empty: Typed = { to: null, on: day, reason: '', breakKind: null, expectedBack: '' };
  const [typed, setTyped] = useState(empty);
  const prefix = `change-${episodeId}-`;
  const submit = useSubmit(prefix, `${prefix}send`, episodeChangeFields);
  const type = (more: Partial<Typed>) => setTyped({ ...typed, ...more });
  const onSubmit = async (event: FormEvent) => {
    event.preventDefault();
    const { to } = typed;
    const missing: readonly Problem[] = to ? [] : [{ field: 'to', text: say('choose-the-change') }];
    const isBreak = to === 'on-break';
    const taken = await submit.send(missing, async () => {
      const breakKind = isBreak ? typed.breakKind : null;
      const expectedBack = isBreak && typed.expectedBack ? typed.expectedBack : null;
      const change = { ...typed, episodeId, breakKind, expectedBack };
      await client.clinician.episodes.change.mutate({ patientId, change });
    });
    if (!taken) return;
    setTyped(empty);
    router.refresh();
  };
  return { typed, type, prefix, submit, onSubmit };
};

export const ChangeForm = (props: ChangeFormProps) => {
  const { from, may } = props;
  const { typed, type, prefix, submit, onSubmit } = useChange(props);
  const { errorOf } = submit;
  return (
    <form method="post" className="stack" noValidate onSubmit={(event) => void onSubmit(event)}>
      <ErrorSummary problems={submit.problems} />
      <RadioGroup
        name={`${prefix}to`}
        legend="Change"
        error={errorOf('to')}
        options={may.map((value) => ({ value, label: changeInWords(from, value), hint: hints[value] }))}
        chosen={typed.to}
        onChoose={(to) => type({ to })}
      />
      {typed.to === 'on-break' ? (
        <BreakFields prefix={prefix} typed={typed} onType={type} errorOf={errorOf} />
      ) : null}
      <div className="fields">
        <DayField
          name={`${prefix}on`}
          label={say('first-day')}
          value={typed.on}
          error={errorOf('on')}
          onDay={(on) => type({ on })}
        />
        <TextField
          name={`${prefix}reason`}
          label="Reason"
          value={typed.reason}
          error={errorOf('reason')}
          onChange={(event) => type({ reason: event.target.value })}
        />
      </div>
      <div>
        <Button type="submit" id={`${prefix}send`} aria-disabled={submit.isBusy || undefined}>
          {typed.to ? changeInWords(from, typed.to) : say('record-the-change')}
        </Button>
      </div>
    </form>
  );
};
