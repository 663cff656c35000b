/** Every benchmark, one after the other, so that none shares the machine with another: `npm run bench`. */
await import('./deposit.bench.ts');
await import('./demo.bench.ts');
await import('./recording.bench.ts');
await import('./film.bench.ts');
await import('./hour.bench.ts');

export {};
