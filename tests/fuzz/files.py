"""Files as an export makes them: one of a keeper, one of a server."""

__all__ = ["FILES"]

FILES = [
    (
        '{"noonstone": "keeper", "version": 1, "settings": {"units": "in", "zone": "UTC"},'
        '"enclosures": [{"name": "Pebble’s box", "setup": {"animal": "bearded-dragon",'
        '"tube_percent": 12, "screen": {"passes": 0.6}, "distance_m": 0.3},'
        '"readings": [{"day": "2026-05-01", "of": "uvi", "value": 3.5, "distance_m": 0.3}]}],'
        '"reminders": [{"about": "meter", "enclosure": "pebble\'s box",'
        '"due": "2026-06-01T08:00:00Z", "zone": "UTC", "every_days": 30}]}'
    ),
    (
        '{"noonstone": "server", "version": 1, "settings": {"guide_url": "https://x.invalid/a"},'
        '"channels": {"123": "private"}, "lamps": [{"name": "Our tube", "constant_uvi_m": 1.7,'
        '"doubt_factor": 1.2, "readings": 3, "lit_length_m": 0.5, "set_on": "2026-05-01"}],'
        '"screens": [{"name": "Fly mesh", "passes": 0.6, "set_on": "2026-05-01"}],'
        '"targets": [{"animal": "bearded-dragon", "subject": "uvi", "low": 3, "high": 5,'
        '"set_on": "2026-05-01"}]}'
    ),
]
