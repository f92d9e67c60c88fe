export * from '/tmp/gb/old/src/kernel/plane'
