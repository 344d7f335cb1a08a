'use client';
/** The frame of the patient's pages, in the person's own language. */
import type { ReactNode } from 'react';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import { SignOut } from '#ui/shared/sign-out.tsx';
import { say } from '#ui/words.ts';
import { forgetPeople } from './phone/own-store.ts';
import type { Chosen } from './preferences/chosen.ts';
import { InOwnWords } from './preferences/in-own-words.tsx';

export interface PatientFrameProps {
  readonly current: '/today' | '/how-it-went';
  readonly place?: string;
  readonly chosen: Chosen;
  readonly children: ReactNode;
}

const Frame = ({ current, place, children }: Omit<PatientFrameProps, 'chosen'>) => (
  <PageFrame
    audience="patient"
    homeHref="/today"
    place={place}
    links={[
      { href: '/today', text: say('frame.today'), isCurrent: current === '/today' },
      { href: '/how-it-went', text: say('history.title'), isCurrent: current === '/how-it-went' },
      { href: '/who-opened', text: say('opened.title') },
    ]}
    account={<SignOut onLeave={forgetPeople} />}
    skipText={say('skip.main')}
    pagesText={say('skip.pages')}
  >
    {children}
  </PageFrame>
);

export const PatientFrame = ({ chosen, ...props }: PatientFrameProps) => (
  <InOwnWords chosen={chosen}>
    <Frame {...props} />
  </InOwnWords>
);
