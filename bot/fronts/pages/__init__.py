"""The guide as a site: written to a folder, or served on this computer with a try-it page."""
