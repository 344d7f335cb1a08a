/** The frame of the patient's pages around a visit. */
import type { ReactNode } from 'react';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import { SignOut } from '#ui/shared/sign-out.tsx';
import { say } from '#ui/words.ts';

export const VisitFrame = ({
  current,
  children,
}: {
  readonly current: '/before-visit' | '/before-visit/agreements' | '/write';
  readonly children: ReactNode;
}) => (
  <PageFrame
    audience="patient"
    homeHref="/today"
    links={[
      { href: '/today', text: say('frame.today') },
      { href: '/before-visit', text: say('visit.title'), isCurrent: current === '/before-visit' },
      {
        href: '/before-visit/agreements',
        text: say('agree.title'),
        isCurrent: current === '/before-visit/agreements',
      },
      { href: '/write', text: say('write.link'), isCurrent: current === '/write' },
    ]}
    account={<SignOut />}
  >
    {children}
  </PageFrame>
);
