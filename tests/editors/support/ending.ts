// Ends this test process as soon as the runner that started it is gone: what we started hangs on us and ends with us.
process.on('disconnect', () => process.exit(1));
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => process.exit(1));
