/** The frame of the patient's pages. */
import type { ReactNode } from 'react';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import { SignOut } from '#ui/shared/sign-out.tsx';
import { say } from '#ui/words.ts';

export interface PatientFrameProps {
  readonly current: '/today' | '/how-it-went';
  readonly place?: string;
  readonly children: ReactNode;
}

export const PatientFrame = ({ current, place, children }: PatientFrameProps) => (
  <PageFrame
    audience="patient"
    homeHref="/today"
    place={place}
    links={[
      { href: '/today', text: say('frame.today'), isCurrent: current === '/today' },
      { href: '/how-it-went', text: say('history.title'), isCurrent: current === '/how-it-went' },
      { href: '/who-opened', text: say('opened.title') },
    ]}
    account={<SignOut />}
  >
    {children}
  </PageFrame>
);
