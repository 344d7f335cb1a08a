/** Tempo, rest and time under restriction of a planned exercise, held against the scheme and the caps. */
import { answer, type Note, type Outcome, type Refusal, refuse } from '#core/outcome.ts';
import { exerciseCapSeconds, secondsPerRepetitionRange } from './limits.ts';
import type { OcclusionRequest, WorkingLine } from './occlusion-request.ts';
import { restrictionSeconds } from './restriction-time.ts';
import type { OcclusionScheme } from './schemes.ts';

type TimedRequest = Pick<OcclusionRequest, 'secondsPerRepetition' | 'restSeconds' | 'inflation'>;

const timeOf = (request: TimedRequest, scheme: OcclusionScheme) =>
  restrictionSeconds({
    repetitions: scheme.repetitions,
    secondsPerRepetition: request.secondsPerRepetition,
    restSeconds: request.restSeconds,
    inflation: request.inflation ?? scheme.inflation,
  });

const within = (
  field: string,
  value: number,
  range: { readonly low: number; readonly high: number },
  what: string,
): readonly Refusal[] => {
  const reason = `${what}: ${range.low} to ${range.high} s.`;
  if (!(value >= range.low)) return [{ field: `input.request.${field}`, code: 'too-low', reason }];
  return value > range.high ? [{ field: `input.request.${field}`, code: 'too-high', reason }] : [];
};

const notesFor = (scheme: OcclusionScheme): readonly Note[] => [
  ...(scheme.perSession === null
    ? []
    : [
        {
          code: 'once-per-session',
          text: `At most ${scheme.perSession} exercise of this scheme in a session.`,
        },
      ]),
  ...(scheme.fewest === null
    ? []
    : [
        {
          code: 'repetition-band',
          text: `A set counts from ${scheme.fewest} repetitions; time is reckoned at the upper end.`,
        },
      ]),
  ...(scheme.citation.mark === 'common-practice'
    ? [{ code: 'common-practice', text: 'Common practice without a source.' }]
    : []),
  ...(scheme.citation.mark === 'memory'
    ? [
        {
          code: 'from-memory',
          text: 'The table of the position stand was remembered, not seen; a restatement agrees.',
        },
      ]
    : []),
];

export const checkTiming = (
  request: TimedRequest,
  scheme: OcclusionScheme,
): Outcome<{ readonly restrictedSeconds: number }> => {
  const refused = [
    ...within(
      'secondsPerRepetition',
      request.secondsPerRepetition,
      secondsPerRepetitionRange.value,
      'One repetition',
    ),
    ...within('restSeconds', request.restSeconds, scheme.restSeconds, 'Rest in this scheme'),
  ];
  if (refused.length > 0) return { ok: false, refused };
  const { restrictedSeconds } = timeOf(request, scheme);
  // The cap of a whole session is longer than this one for either limb, so it cannot bind here.
  if (restrictedSeconds > exerciseCapSeconds.value) {
    return refuse(
      'request.secondsPerRepetition',
      'too-high',
      `${restrictedSeconds} s under restriction is over the ${exerciseCapSeconds.value} s cap of one exercise; shorten tempo or rest, or let the cuff down in the rests.`,
    );
  }
  return answer({ restrictedSeconds }, notesFor(scheme));
};

export const timingLine = (request: TimedRequest, scheme: OcclusionScheme): WorkingLine => {
  const { underTensionSeconds, restrictedSeconds } = timeOf(request, scheme);
  const inflation = request.inflation ?? scheme.inflation;
  const rests =
    inflation === 'continuous'
      ? `, plus ${scheme.repetitions.length - 1} rests of ${request.restSeconds} s`
      : ', cuff down in the rests';
  return {
    text: `${underTensionSeconds} s of work at ${request.secondsPerRepetition} s a repetition${rests} = ${restrictedSeconds} s under restriction, cap ${exerciseCapSeconds.value} s.`,
    support: exerciseCapSeconds.citation.source,
  };
};
