"""What may be saved, as plain checked values: no database, no Discord, no text that people wrote.

The store reads and writes them, the desk asks for them, exports and imports are made of them.
"""
