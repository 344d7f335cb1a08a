/** The clinic's figures as a file. */
import { figuresFileHandler } from '#server/http/figures-file-handler.ts';
import { runtime } from '#server/runtime.ts';

export const GET = async (request: Request) => figuresFileHandler(runtime(), request);
