'use client';
/** Which single answers would have changed a decision: asked of the server, and drawn, when somebody opens it. */
import { lazy, Suspense, useState } from 'react';
import { say } from '#messages/en/staff/review.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';

const Others = lazy(() => import('./other-answers.tsx'));

export const WhatWouldChange = (props: { readonly patientId: string; readonly decisionId: string }) => {
  const [isWanted, setWanted] = useState(false);
  return (
    <Disclosure summary={say('what-would-change')} onOpen={() => setWanted(true)}>
      {isWanted ? (
        <Suspense fallback="…">
          <Others {...props} />
        </Suspense>
      ) : null}
    </Disclosure>
  );
};
