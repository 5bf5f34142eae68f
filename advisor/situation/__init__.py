"""What is known of the job once every silence has been filled with the worst of ordinary practice."""

from advisor.situation.settle import Situation, settle

__all__ = ["Situation", "settle"]
