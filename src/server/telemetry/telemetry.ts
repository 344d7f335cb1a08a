/**
 * What the server tells of itself: one structured line a request and a call, and counts of them.
 * A line holds a request id, a route, an outcome and a time. It never holds what was sent, answered
 * or stored: not even the text of a fault, which may quote it.
 */
import { type DestinationStream, type Logger, pino } from 'pino';
import type { ObservedCall } from '#api/context.ts';
import { type Metrics, requestMetrics } from './metrics.ts';

export interface Telemetry {
  readonly log: Logger;
  readonly metrics: Metrics;
}

/** Belt and braces: whatever would carry words of people is cut out even when somebody logs it by mistake. */
const redact = {
  paths: [
    'email',
    'name',
    'password',
    'passphrase',
    'pin',
    'code',
    'input',
    'body',
    'cookie',
    'authorization',
    'headers',
    '*.email',
    '*.password',
    '*.pin',
    '*.code',
    '*.input',
    '*.body',
    '*.headers',
  ],
  censor: '[left out]',
};

/**
 * Standard error, so that what a command prints stays alone on standard output. A page calls some ten procedures
 * and does not wait for a line of each to be written; what is still to be written as the process ends is written then.
 */
const standardError = (): DestinationStream => pino.destination({ dest: 2, sync: false });

export const makeTelemetry = (destination?: DestinationStream): Telemetry => {
  const options = { base: undefined, messageKey: 'event', timestamp: pino.stdTimeFunctions.isoTime, redact };
  return { log: pino(options, destination ?? standardError()), metrics: requestMetrics() };
};

const held = globalThis as typeof globalThis & { loadgateTelemetry?: Telemetry };

export const telemetry = (): Telemetry => {
  held.loadgateTelemetry ??= makeTelemetry();
  return held.loadgateTelemetry;
};

const frame = /^\s+at .+/;

/** A fault without its words: kind, code and where it came from. */
export const faultOf = (fault: unknown) => {
  if (!(fault instanceof Error)) return { kind: typeof fault };
  const { code = (fault.cause as { code?: unknown } | undefined)?.code } = fault as { code?: unknown };
  return {
    kind: fault.name,
    errorCode: typeof code === 'string' && /^[A-Z_]{3,60}$/.test(code) ? code : undefined,
    at: (fault.stack ?? '')
      .split('\n')
      .filter((line) => frame.test(line))
      .slice(0, 6)
      .map((line) => line.trim()),
  };
};

/** Told of every procedure call. */
export const observeCalls =
  (requestId: string) =>
  (call: ObservedCall): void => {
    const { log, metrics } = telemetry();
    const { path, kind, outcome, problem } = call;
    metrics.call(path, outcome, call.milliseconds);
    const line = { requestId, path, kind, outcome, problem, ms: Math.round(call.milliseconds) };
    if (call.fault) log.error({ ...line, fault: faultOf(call.fault) }, 'call');
    else log.info(line, 'call');
  };
