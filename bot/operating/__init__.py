"""Running the bot for others: logs, health, figures of use, units to install it, a check-up."""
