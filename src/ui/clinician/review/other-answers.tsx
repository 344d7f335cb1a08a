'use client';
/** The answers that would have changed a decision, fetched for the one that is looked at. */
import { useEffect, useState } from 'react';
import { say } from '#messages/en/staff/review/what-would-change.ts';
import { ErrorSummary, type Problem } from '#ui/design-system/error-summary.tsx';
import type { WhatWouldChangeAnswer } from '../answers.ts';
import { client } from '../client.ts';
import { refusedBy } from '../forms/submit-problems.ts';
import { OtherAnswersView } from './other-answers-view.tsx';

interface Loaded {
  readonly answer: WhatWouldChangeAnswer | null;
  readonly problems: readonly Problem[];
}

const OtherAnswers = ({
  patientId,
  decisionId,
}: {
  readonly patientId: string;
  readonly decisionId: string;
}) => {
  const [{ answer, problems }, setLoaded] = useState<Loaded>({ answer: null, problems: [] });
  useEffect(() => {
    let isLeft = false;
    const load = async (): Promise<Loaded> => {
      try {
        const input = { patientId, decisionId };
        return { answer: await client.clinician.review.whatWouldChange.query(input), problems: [] };
      } catch (error) {
        return { answer: null, problems: refusedBy(error, '', `decision-${decisionId}`).problems };
      }
    };
    void load().then((loaded) => {
      if (!isLeft) setLoaded(loaded);
    });
    return () => {
      isLeft = true;
    };
  }, [patientId, decisionId]);
  if (problems.length > 0) return <ErrorSummary problems={problems} />;
  return answer ? <OtherAnswersView {...answer} /> : <p role="status">{say('loading')}</p>;
};

export default OtherAnswers;
