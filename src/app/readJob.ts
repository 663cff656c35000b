/** Reads a job with every check of its schema. In a file of its own, to be fetched when there is a job to read. */
export { parseJob as readJob } from '../../sim/index.ts';
