#!/usr/bin/env node
// Starts plainleaf from its TypeScript sources: tsx reads them as they are, with this project's own settings.
import { fileURLToPath } from 'node:url';
import { register } from 'tsx/esm/api';

process.env.NODE_ENV ??= 'production';
register({ tsconfig: fileURLToPath(new URL('../../tsconfig.json', import.meta.url)) });
const { main } = await import('./main.ts');
process.exitCode = await main(process.argv.slice(2));
