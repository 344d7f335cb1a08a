'use client';
/** A change of an episode of care: only what may follow is offered, each with a day and a reason. */
import { useRouter } from 'next/navigation';
import { breakKinds, type EpisodeState } from '#core/episode/episode.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/episode.ts';
import { changeEpisode } from '#ui/clinician/forms/sent/care.ts';
import { type TypedForm, useSent } from '#ui/clinician/forms/use-form.ts';
import { DayField } from '#ui/design-system/day/day-field.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { SendButton } from '#ui/design-system/posted/scripted-form.tsx';
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

const BreakFields = ({ at }: { readonly at: TypedForm }) => (
  <>
    <RadioGroup
      name={`${at.prefix}breakKind`}
      legend={say('kind-of-break')}
      isWrapped
      error={at.errorOf('breakKind')}
      options={breakKinds.map((value) => ({ value, label: breakInWords[value] }))}
      chosen={(at.typed.breakKind || null) as (typeof breakKinds)[number] | null}
      onChoose={(kind) => at.onType('breakKind', kind)}
    />
    <DayField
      name={`${at.prefix}expectedBack`}
      label={say('expected-back')}
      hint={say('back-unknown')}
      isOptional
      value={at.typed.expectedBack ?? ''}
      error={at.errorOf('expectedBack')}
      onDay={(day) => at.onType('expectedBack', day)}
    />
  </>
);

export const ChangeForm = ({ patientId, episodeId, from, may, day }: ChangeFormProps) => {
  const router = useRouter();
  const about = { patientId, episodeId };
  const start = { on: day };
  const { at } = useSent({ sent: changeEpisode, about, start, clearsTo: start, onTaken: router.refresh });
  const { prefix, typed, errorOf, submit } = at;
  const to = (typed.to || null) as EpisodeState | null;
  return (
    <PostedForm form={changeEpisode.name} about={about} className="stack" onSubmit={at.onSubmit}>
      <ErrorSummary problems={submit.problems} />
      <RadioGroup
        name={`${prefix}to`}
        legend="Change"
        error={errorOf('to')}
        options={may.map((value) => ({ value, label: changeInWords(from, value), hint: hints[value] }))}
        chosen={to}
        onChoose={(value) => at.onType('to', value)}
      />
      {to === 'on-break' ? <BreakFields at={at} /> : null}
      <div className="fields">
        <DayField
          name={`${prefix}on`}
          label={say('first-day')}
          value={typed.on ?? ''}
          error={errorOf('on')}
          onDay={(on) => at.onType('on', on)}
        />
        <TextField
          name={`${prefix}reason`}
          label="Reason"
          value={typed.reason ?? ''}
          error={errorOf('reason')}
          onChange={(event) => at.onType('reason', event.target.value)}
        />
      </div>
      <div>
        <SendButton id={at.buttonId} aria-disabled={submit.isBusy || undefined}>
          {to ? changeInWords(from, to) : say('record-the-change')}
        </SendButton>
      </div>
    </PostedForm>
  );
};
