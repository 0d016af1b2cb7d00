// What is set while gauges are read.
