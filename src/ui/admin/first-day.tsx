/** What a new clinic has to settle before its first patient; nothing once all of it is done. */
import type { FirstDayJob } from '#core/clinic/first-day-list.ts';
import { say } from '#messages/en/staff/administration/first-day.ts';
import { StatusTag } from '#ui/design-system/status-tag.tsx';

export type FirstDayJobs = readonly FirstDayJob[];

const stateOf = (one: FirstDayJob): string => {
  switch (one.job) {
    case 'clinic-numbers':
      return one.isDone
        ? say('clinic-numbers.done')
        : say('clinic-numbers.open', {
            missing: one.missing.map((number) => say(`missing.${number}`)).join(', '),
          });
    case 'monitoring-hours':
      return say(one.isDone ? 'monitoring-hours.done' : 'monitoring-hours.open');
    case 'second-clinician':
      if (one.isDone) return say('second-clinician.done', { count: one.clinicians });
      return say(one.clinicians === 0 ? 'second-clinician.none' : 'second-clinician.one');
    case 'covering-clinician':
      return one.state === 'nobody'
        ? say('covering-clinician.nobody')
        : say(`covering-clinician.${one.state}`, { name: one.name ?? '' });
    case 'consent-wording':
      return one.isDone
        ? say('consent-wording.done', { all: one.all })
        : say('consent-wording.open', { own: one.own, all: one.all });
  }
};

const hrefs: Readonly<Record<FirstDayJob['job'], string>> = {
  'clinic-numbers': '/administration/care#clinic',
  'monitoring-hours': '/administration/care#hours',
  'second-clinician': '/administration#add-person',
  'covering-clinician': '/administration/care#covering',
  'consent-wording': '/administration/care#consents',
};

const Job = ({ one }: { readonly one: FirstDayJob }) => (
  <li className="first-day-job">
    <StatusTag shape={one.isDone ? 'done' : 'unknown'} tone={one.isDone ? 'soft' : 'care'}>
      {say(one.isDone ? 'done' : 'open')}
    </StatusTag>
    <div>
      <h3>{say(one.job)}</h3>
      <p className={one.isDone ? 'soft' : undefined}>
        {stateOf(one)} {one.isDone ? null : say(`follows.${one.job}`)}
      </p>
    </div>
    {one.isDone ? null : <a href={hrefs[one.job]}>{say(`do.${one.job}`)}</a>}
  </li>
);

export const FirstDay = ({ jobs }: { readonly jobs: FirstDayJobs }) => {
  const open = jobs.filter(({ isDone }) => !isDone).length;
  if (open === 0) return null;
  return (
    <section className="first-day stack-close" aria-labelledby="first-day">
      <h2 id="first-day">{say('title')}</h2>
      <p>{say('lead', { open, all: jobs.length })}</p>
      <ol className="plain-list">
        {jobs.map((one) => (
          <Job key={one.job} one={one} />
        ))}
      </ol>
    </section>
  );
};
