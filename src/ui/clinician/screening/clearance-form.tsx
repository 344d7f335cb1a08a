'use client';
/** Clearing what may be cleared, with a reason. The reason stays in sight afterwards, with the name. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import type { Method } from '#core/prescribing/methods.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import { FreshSignIn } from '#ui/account/fresh-sign-in.tsx';
import { Button } from '#ui/design-system/button.tsx';
import { CheckboxGroup } from '#ui/design-system/checkbox-group.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { LongTextField } from '#ui/design-system/text-field.tsx';
import { client } from '../client.ts';
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

const everyLimb = 'every limb';

const limbChoices = [everyLimb, ...limbOptions].map((value) => ({
  value,
  label: value.charAt(0).toUpperCase() + value.slice(1),
}));

const start = { method: null as Method | null, findings: [] as readonly string[], limb: '', reason: '' };

const clearanceOf = ({ method, findings, limb, reason }: typeof start) => {
  const [side, name] = limb === everyLimb ? [null, null] : limb.split(' ');
  return { method, findings, reason, side, limb: name };
};

const missingIn = ({ method, findings, limb, reason }: typeof start) => [
  ...(method === null ? [{ field: 'method', text: 'Choose the method.' }] : []),
  ...(method !== null && findings.length === 0
    ? [{ field: 'findings', text: 'Tick the findings you clear.' }]
    : []),
  ...(limb === '' ? [{ field: 'limb', text: 'Choose the limb, or every limb.' }] : []),
  ...(reason.trim() === ''
    ? [{ field: 'reason', text: 'Write why it is cleared, and on whose advice.' }]
    : []),
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
        legend="Findings to clear"
        error={errorOf('findings')}
        options={reasons.map((reason) => ({
          value: reason.code,
          label: reason.text,
          hint:
            reason.clearedBy === 'physician'
              ? 'A physician must clear it: give their name and the date in the reason.'
              : `Reaches ${reason.limbs.join(', ')}`,
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
      hint="What was found, and on whose advice. It is shown with your name wherever the method is used."
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
  const change = (more: Partial<typeof start>) => setTyped({ ...typed, ...more });
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
  if (methods.length === 0) return <p className="soft">There is no finding to clear.</p>;
  return (
    <form method="post" className="stack" noValidate onSubmit={(event) => void send(event)}>
      <ErrorSummary problems={submit.problems} />
      {submit.needsProof ? <FreshSignIn onProved={submit.forget} onCancel={submit.forget} /> : null}
      <ClearanceFields
        methods={methods}
        reasons={reasons}
        typed={typed}
        change={change}
        errorOf={submit.errorOf}
      />
      <Button type="submit" id="clear-send" aria-disabled={submit.isBusy || undefined}>
        Clear, with precautions
      </Button>
    </form>
  );
};
