'use client';
/** Clearing what may be cleared, with a reason. The reason stays in sight afterwards, with the name. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import type { Method } from '#core/prescribing/methods.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import { say } from '#messages/en/staff/screening.ts';
import { FreshSignIn } from '#ui/account/fresh-sign-in.tsx';
import { CheckboxGroup } from '#ui/design-system/checkbox-group.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { LongTextField } from '#ui/design-system/text-field.tsx';
import { client } from '../client.ts';
import { optionInWords } from '../forms/field-words.ts';
import { type Submit, useSubmit } from '../forms/use-submit.ts';
import { methodInWords } from '../words.ts';
import { type GroupedReason, groupedReasons } from './outcome-table.tsx';
import { limbOptions } from './screening-form-state.ts';

const clearable = (outcomes: readonly MethodOutcome[]) =>
  outcomes.map((outcome) => ({
    ...outcome,
    reasons: outcome.reasons.filter(
      (reason) => reason.eligibility === 'closed-until-cleared' && reason.clearedBy !== null,
    ),
  }));

const everyLimb = 'every';

const limbChoices = [
  { value: everyLimb, label: say('every-limb') },
  ...limbOptions.map((value) => ({ value, label: optionInWords(value) })),
];

const start = { method: null as Method | null, findings: [] as readonly string[], limb: '', reason: '' };

const clearanceOf = ({ method, findings, limb, reason }: typeof start) => {
  const [side, name] = limb === everyLimb ? [null, null] : limb.split(' ');
  return { method, findings, reason, side, limb: name };
};

const missingIn = ({ method, findings, limb, reason }: typeof start) => [
  ...(method === null ? [{ field: 'method', text: say('clear.method-missing') }] : []),
  ...(method !== null && findings.length === 0
    ? [{ field: 'findings', text: say('clear.findings-missing') }]
    : []),
  ...(limb === '' ? [{ field: 'limb', text: say('clear.limb-missing') }] : []),
  ...(reason.trim() === '' ? [{ field: 'reason', text: say('clear.reason-missing') }] : []),
];

interface ClearanceFieldsProps {
  readonly methods: readonly Method[];
  readonly reasons: readonly GroupedReason[];
  readonly typed: typeof start;
  readonly change: (more: Partial<typeof start>) => void;
  readonly errorOf: Submit['errorOf'];
}

const ClearanceFields = ({ methods, reasons, typed, change, errorOf }: ClearanceFieldsProps) => (
  <>
    <RadioGroup
      name="clear-method"
      legend="Method"
      error={errorOf('method')}
      isWrapped
      options={methods.map((method) => ({ value: method, label: methodInWords[method] }))}
      chosen={typed.method}
      onChoose={(method) => change({ method, findings: [] })}
    />
    {typed.method ? (
      <CheckboxGroup
        name="cleared-findings"
        legend={say('clear.findings')}
        error={errorOf('findings')}
        options={reasons.map((reason) => ({
          value: reason.code,
          label: reason.text,
          hint:
            reason.clearedBy === 'physician'
              ? say('clear.physician')
              : say('clear.reaches', { limbs: reason.limbs.join(', ') }),
        }))}
        chosen={typed.findings}
        onChoose={(findings) => change({ findings })}
      />
    ) : null}
    <RadioGroup
      name="clear-limb"
      legend="For"
      error={errorOf('limb')}
      isWrapped
      options={limbChoices}
      chosen={typed.limb}
      onChoose={(limb) => change({ limb })}
    />
    <LongTextField
      name="clear-reason"
      label="Reason"
      hint={say('clear.reason-hint')}
      error={errorOf('reason')}
      value={typed.reason}
      onChange={(event) => change({ reason: event.target.value })}
    />
  </>
);

export const ClearanceForm = (props: {
  readonly patientId: string;
  readonly outcomes: readonly MethodOutcome[];
}) => {
  const router = useRouter();
  const [typed, setTyped] = useState(start);
  const submit = useSubmit('clear-', 'clear-send');
  const change = (more: Partial<typeof start>) => {
    for (const [field, value] of Object.entries(more)) submit.answered(field, String(value ?? ''));
    setTyped({ ...typed, ...more });
  };
  const open = clearable(props.outcomes).filter((outcome) => outcome.reasons.length > 0);
  const methods = [...new Set(open.map((outcome) => outcome.method))];
  const reasons = groupedReasons(open.filter((outcome) => outcome.method === typed.method));
  const send = async (event: FormEvent) => {
    event.preventDefault();
    const taken = await submit.send(missingIn(typed), async () => {
      await client.clinician.screening.clear.mutate({
        patientId: props.patientId,
        clearance: clearanceOf(typed),
      });
    });
    if (!taken) return;
    setTyped(start);
    router.refresh();
  };
  if (methods.length === 0) return <p className="soft">{say('clear.nothing')}</p>;
  return (
    <ScriptedForm className="stack" onSubmit={(event) => void send(event)}>
      <ErrorSummary problems={submit.problems} />
      {submit.needsProof ? <FreshSignIn onProved={submit.forget} onCancel={submit.forget} /> : null}
      <ClearanceFields
        methods={methods}
        reasons={reasons}
        typed={typed}
        change={change}
        errorOf={submit.errorOf}
      />
      <SendButton id="clear-send" aria-disabled={submit.isBusy || undefined}>
        {say('clear')}
      </SendButton>
    </ScriptedForm>
  );
};
