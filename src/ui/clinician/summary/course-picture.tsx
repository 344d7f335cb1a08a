/**
 * Twelve weeks in a picture drawn on the server: the dose as a staircase with its steps named, the mornings
 * hanging below. A morning within the usual is pale, one over it is ink with a stem; a cross is an answer that
 * did not come. What it shows is said in the sentences beside it and, in full, in the review.
 */
import { ticksOf } from '#core/review/review-chart.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/record/summary.ts';
import {
  left,
  namedSteps,
  type Picture,
  painTop,
  perPoint,
  plotEnd,
  type Scales,
  scales,
  width,
} from './course-scale.ts';

const staircase = ({ steps, today }: Picture, { x, dose }: Scales): string =>
  steps
    .map(({ from, to, share }, place) => {
      if (share === null) return '';
      const isJoined = place > 0 && steps[place - 1]?.to === from && steps[place - 1]?.share !== null;
      return `${isJoined ? `V${dose(share)}` : `M${x(from)} ${dose(share)}`}H${x(to ?? today)}`;
    })
    .join('');

const Dose = ({ picture, at }: { readonly picture: Picture; readonly at: Scales }) => {
  const last = picture.steps.at(-1);
  const now = last?.to === null ? last.share : null;
  const { waitingShare } = picture;
  return (
    <>
      <line className="course-one" x1={left} x2={plotEnd} y1={at.dose(1)} y2={at.dose(1)} />
      <text className="course-axis" x={left - 6} y={at.dose(1) + 4} textAnchor="end">
        1.00
      </text>
      <path className="course-dose" d={staircase(picture, at)} />
      {namedSteps(picture, at).map(({ key, text, x, y, anchor }) => (
        <text key={key} x={x} y={y} textAnchor={anchor}>
          {text}
        </text>
      ))}
      {now === null ? null : (
        <text x={plotEnd + 8} y={at.dose(now) + 4}>
          {say('picture.now', { share: now.toFixed(2) })}
        </text>
      )}
      {waitingShare === null || now === null ? null : (
        <>
          <path className="course-waiting" d={`M${plotEnd} ${at.dose(now)}V${at.dose(waitingShare)}h8`} />
          <text
            className="course-to-sign"
            x={plotEnd + 12}
            y={at.dose(waitingShare) - (waitingShare > now ? 6 : -14)}
          >
            {say('picture.to-sign', { share: waitingShare.toFixed(2) })}
          </text>
        </>
      )}
    </>
  );
};

const Bands = ({ picture, at }: { readonly picture: Picture; readonly at: Scales }) => {
  const last = picture.thresholds.at(-1);
  return (
    <>
      {picture.thresholds.map((span) => (
        <g key={span.from}>
          {span.usualPainTop === null ? null : (
            <rect
              className="course-usual"
              x={at.x(span.from)}
              y={painTop}
              width={Math.max(0, at.x(span.to) - at.x(span.from))}
              height={span.usualPainTop * perPoint}
            />
          )}
          <line
            className="course-limit"
            x1={at.x(span.from)}
            x2={at.x(span.to)}
            y1={at.pain(span.painCeiling)}
            y2={at.pain(span.painCeiling)}
          />
        </g>
      ))}
      {last ? (
        <>
          <text className="course-limit-name" x={plotEnd + 8} y={at.pain(last.painCeiling) + 4}>
            {say('picture.limit', { limit: last.painCeiling })}
          </text>
          {last.usualPainTop === null ? null : (
            <text x={plotEnd + 8} y={painTop + 10}>
              {say('picture.usual', { top: last.usualPainTop })}
            </text>
          )}
        </>
      ) : null}
    </>
  );
};

/** Each class of marks is one path. */
const morningPaths = ({ mornings }: Picture, { x, pain }: Scales) => {
  const dot = (day: Day, value: number) => `M${x(day)} ${pain(value)}h.01`;
  return {
    within: mornings
      .map((one) => (one.pain !== null && one.over === null ? dot(one.day, one.pain) : ''))
      .join(''),
    over: mornings.map((one) => (one.over === null ? '' : dot(one.day, one.pain!))).join(''),
    stems: mornings
      .map((one) =>
        one.over === null ? '' : `M${x(one.day)} ${pain(one.pain! - one.over)}V${pain(one.pain!)}`,
      )
      .join(''),
    missing: mornings
      .map((one) => (one.pain === null ? `M${x(one.day) - 3} ${painTop - 9}l6 6m0-6l-6 6` : ''))
      .join(''),
    flares: mornings.map((one) => (one.isFlare ? `M${x(one.day) - 3} ${painTop - 15}h6` : '')).join(''),
  };
};

const Mornings = ({ picture, at }: { readonly picture: Picture; readonly at: Scales }) => {
  const paths = morningPaths(picture, at);
  return (
    <>
      <line className="course-zero" x1={left} x2={plotEnd} y1={painTop} y2={painTop} />
      <path className="course-flare" d={paths.flares} />
      <path className="course-within" d={paths.within} />
      <path className="course-stem" d={paths.stems} />
      <path className="course-over" d={paths.over} />
      <path className="course-missing" d={paths.missing} />
    </>
  );
};

/** The axis ends at the worst that was given or at the limit, whichever lies lower. */
const footOf = ({ mornings, thresholds }: Picture): number =>
  Math.max(2, ...mornings.map(({ pain }) => pain ?? 0), ...thresholds.map(({ painCeiling }) => painCeiling));

export const CoursePicture = ({ picture }: { readonly picture: Picture }) => {
  const at = scales(picture);
  const foot = footOf(picture);
  const height = at.pain(foot) + 24;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard.
    <section className="course-scroll" aria-label={say('picture.name')} tabIndex={0}>
      <svg className="course" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
        <text className="course-panel" x={0} y={12}>
          Dose
        </text>
        <text className="course-panel" x={0} y={painTop - 6}>
          Pain
        </text>
        <Bands picture={picture} at={at} />
        <Dose picture={picture} at={at} />
        <Mornings picture={picture} at={at} />
        {[0, foot].map((value) => (
          <text key={value} className="course-axis" x={left - 6} y={at.pain(value) + 4} textAnchor="end">
            {value}
          </text>
        ))}
        {ticksOf(picture.since, picture.today).map(({ day, label }) => (
          <text key={day} className="course-axis" x={at.x(day)} y={height - 4} textAnchor="middle">
            {label}
          </text>
        ))}
      </svg>
    </section>
  );
};
