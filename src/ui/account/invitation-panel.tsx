'use client';
/** An invitation to print and hand over. The code is shown here once and kept nowhere. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '#ui/shared/button.tsx';
import { Asked } from './asked.tsx';
import { change } from './call.ts';
import { QrCode } from './qr-code.tsx';
import { useAsking } from './use-asking.ts';

interface Made {
  readonly code: string;
  readonly expiresAt: number;
}

export interface InvitationPanelProps {
  readonly patientId: string;
  readonly patientName: string;
  readonly origin: string;
  readonly zone: string;
}

const dayOf = (instant: number, zone: string): string =>
  new Intl.DateTimeFormat('en-GB', { timeZone: zone, day: 'numeric', month: 'long', year: 'numeric' }).format(
    instant,
  );

const Slip = ({ made, origin, zone, patientName }: InvitationPanelProps & { readonly made: Made }) => (
  <section className="invitation-slip stack keep-together">
    <h2>For {patientName}</h2>
    <p>
      Open your phone’s camera, point it at the picture and open the page it shows. Or open{' '}
      <strong>{origin}/join</strong> and type this code:
    </p>
    <p className="invitation-code">{made.code}</p>
    <QrCode
      text={`${origin}/join#${made.code}`}
      label="Picture that opens the page with the code filled in"
    />
    <p>
      It works once, until {dayOf(made.expiresAt, zone)}. Then you choose a PIN. Keep this paper to yourself
      until you have used it.
    </p>
  </section>
);

export const InvitationPanel = (props: InvitationPanelProps) => {
  const asking = useAsking('invite');
  const router = useRouter();
  const [made, setMade] = useState<Made | null>(null);
  const invite = () =>
    asking.ask(
      () => change<Made>('staff.phones.invite', { patientId: props.patientId }),
      (invitation) => {
        setMade(invitation);
        router.refresh();
      },
    );
  return (
    <div className="stack">
      <Asked asking={asking} />
      {made ? <Slip {...props} made={made} /> : null}
      <div className="row">
        {made ? <Button onClick={() => window.print()}>Print</Button> : null}
        <Button id="invite" tone={made ? 'plain' : 'primary'} onClick={() => void invite()}>
          {made ? 'Make another (this one stops working)' : 'Make an invitation'}
        </Button>
      </div>
    </div>
  );
};
