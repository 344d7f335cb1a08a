'use client';
/** The one thing to do about an item, done in its row where that can be; else a link to where it is done. */
import { say } from '#messages/en/staff/worklist.ts';
import { Button, LinkButton } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import type { OpenForm, RowProps } from './row-state.ts';
import { useSignDoses } from './use-sign-doses.ts';

interface PrimaryProps extends RowProps {
  readonly setOpen: (open: OpenForm) => void;
}

const Opens = (props: PrimaryProps & { readonly form: OpenForm; readonly label: string }) => {
  const { row, setOpen, form } = props;
  return (
    <Button
      tone={row.work === 'danger' ? 'stop' : 'tint'}
      aria-expanded={false}
      data-item
      data-keys
      onClick={() => setOpen(form)}
    >
      {props.label}
      <span className="visually-hidden">: {row.name}</span>
    </Button>
  );
};

/** One dose that says itself in the row, no large step, with no caution that the one in force has not, is signed there. */
const SignOne = (props: PrimaryProps) => {
  const { row } = props;
  const dose = row.doses[0]!;
  const { submit, sign, id } = useSignDoses({ ...props, patientId: row.patientId });
  return (
    <>
      <ErrorSummary problems={submit.problems} />
      {submit.questions.length > 0 ? (
        <ConfirmQuestion
          question={submit.questions.join(' ')}
          yes={say('replace')}
          no={say('keep')}
          onYes={() => void sign([dose], true)}
          onNo={submit.forget}
        />
      ) : (
        <Button
          tone="tint"
          id={id}
          data-item
          data-keys
          aria-disabled={submit.isBusy || undefined}
          onClick={() => void sign([dose], false)}
        >
          {say('sign-dose', { dose: dose.short })}
          <span className="visually-hidden">
            : {row.name}, {dose.step}
          </span>
        </Button>
      )}
    </>
  );
};

export const PrimaryAction = (props: PrimaryProps) => {
  const { row } = props;
  const { primary, doses } = row;
  switch (primary.act) {
    case 'contact':
      return <Opens {...props} form="contact" label={say('record-contact')} />;
    case 'reply':
      return <Opens {...props} form="reply" label={say('reply')} />;
    case 'sign':
      return doses.length === 1 && doses[0]!.newCautions === null && doses[0]!.named.length === 0 ? (
        <SignOne {...props} />
      ) : (
        <Opens {...props} form="sign" label={say('open-doses', { count: doses.length })} />
      );
    case 'go':
      return (
        <LinkButton tone="plain" href={primary.href} data-item data-keys>
          {primary.label}
          <span className="visually-hidden">: {row.name}</span>
        </LinkButton>
      );
  }
};
