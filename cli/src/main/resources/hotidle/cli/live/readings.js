// Readings that were taken, beside what is worked out.
