// Plain vertical scales, a gauge each.
