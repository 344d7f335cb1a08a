'use client';
/** Every dose of this patient that waits, each in full, under one signature. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import type { RowDose } from '../worklist/row-dose.tsx';
import type { Done } from '../worklist/row-state.ts';
import { SignDoses } from '../worklist/sign-doses.tsx';

/** A card beside it signs another dose: the button of one alone names it. */
const oneOf = (doses: readonly RowDose[], name: string): string | undefined =>
  doses.length === 1 ? say('together.sign-one', { dose: doses[0]!.short, name }) : undefined;

export const SignTogether = (props: {
  readonly patientId: string;
  readonly doses: readonly RowDose[];
  readonly signer: string;
  readonly readAt: number;
}) => {
  const router = useRouter();
  // Of the page as it was opened: what is added later does not make an older look a newer one.
  const [readAt] = useState(props.readAt);
  const [done, setDone] = useState<readonly Done[]>([]);
  const { doses } = props;
  const waiting = doses.filter(({ prescriptionId }) => !done.some(({ id }) => id === prescriptionId));
  return (
    <section className="stack-close" aria-labelledby="together-heading">
      <div className="side-head">
        <h2 id="together-heading" tabIndex={-1}>
          {say('together')}
        </h2>
        <p className="soft">
          {waiting.length === 0 ? say('together.none') : say('together.count', { count: waiting.length })}
        </p>
      </div>
      <div role="status">
        {done.map(({ id, text }) => (
          <p key={id}>{text}</p>
        ))}
      </div>
      <p className="soft small">{say(waiting.length === 0 ? 'together.about' : 'together.who')}</p>
      {waiting.length > 0 ? (
        <SignDoses
          patientId={props.patientId}
          doses={waiting}
          signer={props.signer}
          readAt={readAt}
          label={oneOf(waiting, props.signer)}
          onDone={(one) => setDone((before) => [...before, one])}
          close={() => router.refresh()}
        />
      ) : null}
    </section>
  );
};
