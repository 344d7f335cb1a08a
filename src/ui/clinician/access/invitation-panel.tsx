'use client';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { say } from '#messages/en/staff/access.ts';
/** An invitation to print and hand over. The code is shown here once and kept nowhere. */
import { dateFormat } from '#messages/formats.ts';
import type { InvitationSlip } from '#messages/invitation-slips.ts';
import { translate } from '#messages/translate.ts';
import { Asked } from '#ui/account/asked.tsx';
import { change } from '#ui/account/call.ts';
import { QrCode } from '#ui/account/qr-code.tsx';
import { useAsking } from '#ui/account/use-asking.ts';
import { Button } from '#ui/design-system/button.tsx';

interface Made {
  readonly code: string;
  readonly expiresAt: number;
}

export interface InvitationPanelProps {
  readonly patientId: string;
  readonly patientName: string;
  readonly origin: string;
  readonly zone: string;
  readonly slips: readonly InvitationSlip[];
}

const dayOf = (instant: number, zone: string, locale: string): string =>
  dateFormat(locale, { timeZone: zone, day: 'numeric', month: 'long', year: 'numeric' }).format(instant);

const Slip = ({ made, origin, zone, patientName, slips }: InvitationPanelProps & { readonly made: Made }) => {
  const address = `${origin}/enrol`;
  return (
    <section className="invitation-slip stack keep-together">
      <h2>{say('for', { 'patient-name': patientName })}</h2>
      {slips.map(({ tag, how }) => (
        <p key={tag} lang={tag}>
          {how}
        </p>
      ))}
      <p className="invitation-code">{made.code}</p>
      <QrCode text={`${address}#${made.code}`} label={say('qr-code')} />
      {slips.map(({ tag, locale, once }) => (
        <p key={tag} lang={tag}>
          {translate(once, { date: dayOf(made.expiresAt, zone, locale) }, { locale, forms: {} })}
        </p>
      ))}
    </section>
  );
};

export const InvitationPanel = (props: InvitationPanelProps) => {
  const asking = useAsking('invite');
  const router = useRouter();
  const [made, setMade] = useState<Made | null>(null);
  const invite = () =>
    asking.ask(
      () => change<Made>('clinician.phones.invite', { patientId: props.patientId }),
      (invitation) => {
        setMade(invitation);
        router.refresh();
      },
    );
  return (
    <div className="stack">
      <Asked asking={asking} />
      {made ? <Slip {...props} made={made} /> : null}
      {made ? <p className="soft screen-only">{say('invitation-once')}</p> : null}
      <div className="row">
        {made ? <Button onClick={() => window.print()}>Print</Button> : null}
        <Button id="invite" tone={made ? 'plain' : 'primary'} onClick={() => void invite()}>
          {made ? say('make-another-invitation') : say('make-an-invitation')}
        </Button>
      </div>
    </div>
  );
};
