#!/usr/bin/env node
// The command runs from the TypeScript sources, so that a checkout needs no build.
import { register } from 'tsx/esm/api';

register({ tsconfig: false });
const { main } = await import('./main.ts');
const { allowClosedPipe, nodeIo } = await import('./nodeIo.ts');
allowClosedPipe();
process.exitCode = await main(process.argv.slice(2), nodeIo());
