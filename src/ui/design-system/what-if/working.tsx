'use client';
/** While a whole clinic is worked out: how far it is, and a button that stops it. */
import { useEffect, useState } from 'react';
import { say } from '#messages/en/staff/review/what-if.ts';
import { Button } from '../button.tsx';

interface Progress {
  readonly done: number;
  readonly of: number;
}

const everyMs = 1000;
const place = '/api/trpc/clinician.replay';

const progressOf = async (job: string): Promise<Progress | null> => {
  const input = encodeURIComponent(JSON.stringify({ job }));
  try {
    const response = await fetch(`${place}.progress?input=${input}`);
    return ((await response.json()) as { result?: { data?: Progress | null } }).result?.data ?? null;
  } catch {
    // Asked again in a moment; the work itself tells when it fails.
    return null;
  }
};

const stop = (job: string): void =>
  void fetch(`${place}.stop`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ job }),
  }).catch(() => undefined);

export const Working = ({ job }: { readonly job: string }) => {
  const [progress, setProgress] = useState<Progress | null>(null);
  useEffect(() => {
    const timer = setInterval(() => void progressOf(job).then((told) => told && setProgress(told)), everyMs);
    return () => clearInterval(timer);
  }, [job]);
  return (
    <div className="row">
      {progress && progress.of > 0 ? (
        <progress max={progress.of} value={progress.done} aria-hidden="true" />
      ) : null}
      <span>
        {progress && progress.of > 0
          ? say('working', { done: progress.done, of: progress.of })
          : say('beginning')}
      </span>
      <Button tone="plain" onClick={() => stop(job)}>
        {say('stop')}
      </Button>
    </div>
  );
};
