export * from '/work/b/graph/src/kernel/least-height'
